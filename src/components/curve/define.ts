import { define } from '../define.ts';
import { SpeedCurve } from './curve.ts';

define('homeleg-curve', SpeedCurve);
