import { property } from 'lit/decorators.js';
import type { Fleet } from '../../core/hire/shapes.ts';
import type { WatersFile } from '../../core/route/shapes.ts';
import type { Policy } from '../../core/trip/shapes.ts';
import { FormElement } from '../host/form-element.ts';
import { written, writtenNumber } from '../host/written.ts';
import type { UnitSystem } from '../units/measures.ts';
import { SHIPPED_WATERS } from './fetch-waters.ts';

/** What a page sets of a planner by attributes and properties. */
export abstract class PlannerSettings extends FormElement {
  /** Units shown: nautical, metric or imperial. */
  @property({ converter: written('nautical') }) units: UnitSystem = 'nautical';
  /** "haven" for the invented waters, an address of a GeoJSON file, or "none". */
  @property({ converter: written(SHIPPED_WATERS) }) waters: string = SHIPPED_WATERS;
  /** Address of map pictures with {z}, {x}, {y}; loaded only once the user asks for them or this is set. */
  @property({ converter: written('') }) tiles = '';
  /** Who made the map pictures, as their terms want it shown. */
  @property({ converter: written(''), attribute: 'tiles-attribution' }) tilesAttribution = '';
  /** Address of a forecast of wind with {lat} and {lon}, and {from} and {to} if it wants them; asked only at a press. */
  @property({ converter: written(''), attribute: 'forecast-source' }) forecastSource = '';
  /** Where the map begins, as "latitude, longitude"; without it, at the waters or the route. */
  @property({ converter: written('') }) center = '';
  /** How close the map begins, 2 to 18. */
  @property({ converter: writtenNumber }) zoom: number | undefined;
  /** Address of a boat profile: the measured boat to plan with. */
  @property({ converter: written('') }) profile = '';
  /** The boat to begin with: one of the fleet, a hull of the catalogue, or hull, engine and store of it. */
  @property({ converter: written('') }) boat = '';
  /** Address of a fleet file: the boats offered. */
  @property({ converter: written('') }) fleet = '';
  /** The fleet as an object, in place of `fleet`. */
  @property({ attribute: false }) fleetFile: Fleet | undefined;
  /** A reserve that is kept whatever the user chooses: "thirds", "25 %" or "30 min". */
  @property({ converter: written('') }) reserve = '';
  /** "light" or "dark"; without it as the page. */
  @property({ converter: written(''), reflect: true }) theme = '';
  /** Tells of each size by homeleg-size, and a page round this one's frame of the height needed, by a message. */
  @property({ type: Boolean, attribute: 'tell-size' }) tellSize = false;
  /** Under which name the device keeps what was entered; "none" keeps nothing. */
  @property({ converter: written('homeleg-trip') }) keep = 'homeleg-trip';
  /** Rules and limits of the host; they tighten the user's own. */
  @property({ attribute: false }) tighten: Partial<Policy> = {};
  /** Local waters as an object, in place of `waters`. */
  @property({ attribute: false }) watersFile: WatersFile | undefined;
}
