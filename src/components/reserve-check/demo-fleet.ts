import hireFleet from '../../../shared/craft/hire-fleet.json' with { type: 'json' };
import type { Fleet } from '../../core/hire/shapes.ts';

/** The invented fleet that comes with the site. A test reads it through the door of fleets. */
export const DEMO_FLEET = hireFleet as unknown as Fleet;
