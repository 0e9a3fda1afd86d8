import { measuresFor } from '../../../src/components/units/measures.ts';

export const METRIC = measuresFor('metric', 'en');
