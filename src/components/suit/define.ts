import { define } from '../define.ts';
import { Suit } from './suit.ts';

define('homeleg-suit', Suit);
