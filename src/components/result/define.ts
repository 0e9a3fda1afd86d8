import { define } from '../define.ts';
import { TripResult } from './result.ts';

define('homeleg-result', TripResult);
