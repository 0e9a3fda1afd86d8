import { define } from '../define.ts';
import { Deck } from './deck.ts';

define('homeleg-deck', Deck);
