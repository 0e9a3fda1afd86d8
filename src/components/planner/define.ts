import { define } from '../define.ts';
import { Planner } from './planner.ts';

define('homeleg-planner', Planner);
