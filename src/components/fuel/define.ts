import { define } from '../define.ts';
import { Fuel } from './fuel.ts';

define('homeleg-fuel', Fuel);
