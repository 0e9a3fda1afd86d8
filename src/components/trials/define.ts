import { define } from '../define.ts';
import { TrialsBench } from './trials.ts';

define('homeleg-trials', TrialsBench);
