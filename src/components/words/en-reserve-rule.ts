import type { ReserveRule } from '../../core/trip/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { spoken } from './spoken.ts';

export const reserveRuleWords = spoken('reserveRuleWords', {
  thirds: 'a third out, a third home, a third kept',
  share: (share: string) => `${share} kept`,
  minutes: (time: string) => `${time} of running kept`,
});

/** The reserve rule as a phrase: "a third kept", "25% kept", "30 min kept". */
export function reserveRuleText(rule: ReserveRule, m: Measures): string {
  switch (rule.kind) {
    case 'thirds':
      return reserveRuleWords.thirds;
    case 'share':
      return reserveRuleWords.share(m.show('share', rule.share));
    case 'minutes':
      return reserveRuleWords.minutes(m.time(rule.minutes * 60));
    default:
      return rule satisfies never;
  }
}
