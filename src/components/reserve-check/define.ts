import { define } from '../define.ts';
import { ReserveCheck } from './reserve-check.ts';

define('homeleg-reserve-check', ReserveCheck);
