import type * as curve from '../curve-plot/words.ts';
import type * as fuelBar from '../fuel-bar/words.ts';
import type * as legTable from '../leg-table/words.ts';
import type * as arrows from '../route-map/arrow-words.ts';
import type * as outline from '../route-map/outline-words.ts';
import type * as map from '../route-map/words.ts';
import type * as details from '../trip-details/words.ts';
import type * as round from '../waypoint-table/round-words.ts';
import type * as waypoints from '../waypoint-table/words.ts';
import type * as plan from './en.ts';
import type * as answer from './en-answer.ts';
import type * as checklist from './en-checklist.ts';
import type * as common from './en-common.ts';
import type * as company from './en-company.ts';
import type * as compare from './en-compare.ts';
import type * as data from './en-data.ts';
import type * as deck from './en-deck.ts';
import type * as desk from './en-desk.ts';
import type * as forms from './en-forms.ts';
import type * as further from './en-further.ts';
import type * as given from './en-given.ts';
import type * as hire from './en-hire.ts';
import type * as host from './en-host.ts';
import type * as load from './en-load.ts';
import type * as measured from './en-measured.ts';
import type * as passage from './en-passage.ts';
import type * as planText from './en-plan-text.ts';
import type * as planner from './en-planner.ts';
import type * as saved from './en-saved.ts';
import type * as share from './en-share.ts';
import type * as site from './en-site.ts';
import type * as streams from './en-streams.ts';
import type * as trials from './en-trials.ts';
import type * as units from './en-units.ts';
import type * as water from './en-water.ts';
import type * as waters from './en-waters.ts';

type Modules = typeof arrows &
  typeof curve &
  typeof fuelBar &
  typeof legTable &
  typeof outline &
  typeof map &
  typeof details &
  typeof round &
  typeof waypoints &
  typeof plan &
  typeof answer &
  typeof checklist &
  typeof common &
  typeof company &
  typeof compare &
  typeof data &
  typeof deck &
  typeof desk &
  typeof forms &
  typeof further &
  typeof given &
  typeof hire &
  typeof host &
  typeof load &
  typeof measured &
  typeof passage &
  typeof planText &
  typeof passage &
  typeof planner &
  typeof saved &
  typeof share &
  typeof site &
  typeof streams &
  typeof trials &
  typeof units &
  typeof water &
  typeof waters;

/** Every word of the elements: the groups by name, as one whole language has to give them. */
export type Catalogue = {
  readonly [G in keyof Modules as Modules[G] extends (...given: never[]) => unknown ? never : G]: Modules[G];
};

/** A language on its way: what is missing is said in English. @public */
export type Draft = { readonly [G in keyof Catalogue]?: Loose<Catalogue[G]> };

type Loose<T> = T extends (...given: never[]) => unknown
  ? T
  : T extends readonly unknown[]
    ? T
    : T extends object
      ? { readonly [K in keyof T]?: Loose<T[K]> }
      : T;
