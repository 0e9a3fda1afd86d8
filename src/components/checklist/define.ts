import { define } from '../define.ts';
import { ChecklistElement } from './checklist.ts';

define('homeleg-checklist', ChecklistElement);
