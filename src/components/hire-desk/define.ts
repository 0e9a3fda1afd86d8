import { define } from '../define.ts';
import { HireDesk } from './hire-desk.ts';

define('homeleg-hire-desk', HireDesk);
