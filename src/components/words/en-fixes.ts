import type { Fix, FixCode } from '../../core/trip/shapes.ts';
import type { Measures, StoreKind } from '../units/measures.ts';
import { showOr, side } from './en-pieces.ts';
import { spoken } from './spoken.ts';

export const fixWords = spoken<Record<FixCode, (figure: string, fix: Fix, store: StoreKind) => string>>('fixWords', {
  'add-fuel': (figure, _fix, store) =>
    store === 'fuel'
      ? `Take ${figure ? `${figure} more` : 'more fuel'}`
      : `Charge ${figure ? `${figure} more` : 'more, or take another battery'}`,
  'shorten-route': (figure) => (figure ? `Keep the whole trip within ${figure}` : 'Shorten the route'),
  'slow-down': (figure) => (figure ? `Plan ${figure} through the water` : 'Plan a lower speed'),
  'leave-behind': (figure, { measure, value }) =>
    figure
      ? `Leave ${figure}${measure === 'count' ? (value === 1 ? ' person' : ' people') : ''} ashore`
      : 'Take less weight',
  'give-value': () => 'Fill it in',
  'move-forward': (figure, { value = 0, measure }) =>
    `Move weight ${value < 0 ? 'aft' : 'forward'}${figure && ` until the balance shifts ${figure}${measure === 'share' ? ' of the length' : ''}`}`,
  'move-across': (figure, { value }) =>
    figure ? `Move weight to ${side(value)} until the balance shifts ${figure}` : 'Move weight to the other side',
  'draw-round': () => 'Take me round',
  'leave-earlier': (figure) => (figure ? `Leave ${figure} earlier` : 'Leave earlier'),
  wait: (figure) => (figure ? `Wait ${figure}` : 'Wait for better weather'),
  'read-plate': () => 'Read the plate and fill it in',
  'smaller-engine': (figure) => (figure ? `Use an engine of ${figure} at most` : 'Use a smaller engine'),
  'ease-speed': (figure) => (figure ? `Plan ${figure} through the water` : 'Plan a lower speed'),
});

/** What would mend it, as a short order. Moves are signed: forward and to starboard are positive. */
export function fixText(fix: Fix, m: Measures, store: StoreKind): string {
  const size = fix.value === undefined ? undefined : Math.abs(fix.value);
  return fixWords[fix.code](showOr('', fix.measure, size, m, store), fix, store);
}
