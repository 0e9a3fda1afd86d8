import type { Craft, Position, Station } from '../../core/craft/shapes.ts';
import type { Aboard, Load } from '../../core/load/shapes.ts';
import type { Said } from './deck-said.ts';
import { added, moved, renamed, reweighed, steeredBy } from './edit-load.ts';
import { aboardId, aboardKey, fuelAboard } from './pieces.ts';
import { everyoneSeated, steadiestPlace } from './seats.ts';

/** What the table asks of the load as a whole or of one aboard. */
export type LoadAsk =
  | { readonly what: 'add'; readonly kind: Aboard['kind'] }
  | { readonly what: 'steer'; readonly key: string }
  | { readonly what: 'rename'; readonly key: string; readonly name: string }
  | { readonly what: 'reweigh'; readonly key: string; readonly mass: number }
  | { readonly what: 'seat-everyone' };

/** What it asks of a piece; undefined as a place: nobody knows. */
export type PieceAsk =
  | { readonly what: 'remove'; readonly key: string }
  | {
      readonly what: 'place';
      readonly key: string;
      readonly to: { readonly station: Station } | { readonly at: Position } | undefined;
    };

/** The load as asked for. One who is added goes to the steadiest free place, and it is said where. */
export function asked(craft: Craft, load: Load, ask: LoadAsk): { load: Load; said?: Said } {
  switch (ask.what) {
    case 'add': {
      const { load: more, id } = added(load, ask.kind);
      const station = steadiestPlace(craft, more, more.items.at(-1)!, fuelAboard(craft, more));
      return { load: station ? moved(more, id, { station }) : more, said: { kind: 'moved', key: aboardKey(id) } };
    }
    case 'steer':
      return { load: steeredBy(load, aboardId(ask.key) ?? '') };
    case 'rename':
      return { load: renamed(load, aboardId(ask.key) ?? '', ask.name) };
    case 'reweigh':
      return { load: reweighed(load, aboardId(ask.key) ?? '', ask.mass) };
    case 'seat-everyone':
      return { load: everyoneSeated(craft, load, fuelAboard(craft, load)), said: { kind: 'seated' } };
    default:
      return ask satisfies never;
  }
}
