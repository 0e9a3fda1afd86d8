import { define } from '../define.ts';
import { LoadTable } from './load-table.ts';

define('homeleg-load-table', LoadTable);
