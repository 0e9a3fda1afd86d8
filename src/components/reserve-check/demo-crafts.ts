import crafts from '../../../shared/craft/hire-crafts.json' with { type: 'json' };
import type { Craft } from '../../core/craft/shapes.ts';

/** What the boats of the invented fleet are, by id, as the catalogue has them; a test holds one against the other. */
export const DEMO_CRAFTS = crafts as unknown as Readonly<Record<string, Craft>>;
