import type * as curve from '../curve-plot/words.ts';
import type * as fuelBar from '../fuel-bar/words.ts';
import type * as legTable from '../leg-table/words.ts';
import type * as arrows from '../route-map/arrow-words.ts';
import type * as outline from '../route-map/outline-words.ts';
import type * as map from '../route-map/words.ts';
import type * as details from '../trip-details/words.ts';
import type * as round from '../waypoint-table/round-words.ts';
import type * as waypoints from '../waypoint-table/words.ts';
import type * as answer from './en-answer.ts';
import type * as assumptions from './en-assumptions.ts';
import type * as badCase from './en-bad-case.ts';
import type * as cautions from './en-cautions.ts';
import type * as checklist from './en-checklist.ts';
import type * as common from './en-common.ts';
import type * as company from './en-company.ts';
import type * as compare from './en-compare.ts';
import type * as compass from './en-compass.ts';
import type * as craft from './en-craft.ts';
import type * as data from './en-data.ts';
import type * as day from './en-day.ts';
import type * as deck from './en-deck.ts';
import type * as departure from './en-departure.ts';
import type * as desk from './en-desk.ts';
import type * as fixes from './en-fixes.ts';
import type * as forecast from './en-forecast.ts';
import type * as forms from './en-forms.ts';
import type * as further from './en-further.ts';
import type * as given from './en-given.ts';
import type * as hire from './en-hire.ts';
import type * as host from './en-host.ts';
import type * as landing from './en-landing.ts';
import type * as link from './en-link.ts';
import type * as load from './en-load.ts';
import type * as measured from './en-measured.ts';
import type * as passage from './en-passage.ts';
import type * as payload from './en-payload.ts';
import type * as pieces from './en-pieces.ts';
import type * as planText from './en-plan-text.ts';
import type * as planner from './en-planner.ts';
import type * as problems from './en-problems.ts';
import type * as reasons from './en-reasons.ts';
import type * as regime from './en-regime.ts';
import type * as reserveRule from './en-reserve-rule.ts';
import type * as saved from './en-saved.ts';
import type * as sea from './en-sea.ts';
import type * as share from './en-share.ts';
import type * as site from './en-site.ts';
import type * as start from './en-start.ts';
import type * as streams from './en-streams.ts';
import type * as tide from './en-tide.ts';
import type * as tipping from './en-tipping.ts';
import type * as trials from './en-trials.ts';
import type * as units from './en-units.ts';
import type * as verdict from './en-verdict.ts';
import type * as waters from './en-waters.ts';
import type * as wind from './en-wind.ts';

type Modules = typeof arrows &
  typeof curve &
  typeof fuelBar &
  typeof legTable &
  typeof outline &
  typeof map &
  typeof details &
  typeof round &
  typeof waypoints &
  typeof assumptions &
  typeof badCase &
  typeof cautions &
  typeof compass &
  typeof craft &
  typeof fixes &
  typeof link &
  typeof payload &
  typeof pieces &
  typeof problems &
  typeof reasons &
  typeof regime &
  typeof reserveRule &
  typeof tipping &
  typeof verdict &
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
  typeof planner &
  typeof saved &
  typeof share &
  typeof site &
  typeof streams &
  typeof trials &
  typeof units &
  typeof departure &
  typeof wind &
  typeof forecast &
  typeof tide &
  typeof sea &
  typeof day &
  typeof start &
  typeof landing &
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
