import { tellAll } from '../work-beside.ts';
import { type CardWork, cardWork } from './card-work.ts';

globalThis.addEventListener('message', ({ data }: MessageEvent<CardWork>) => tellAll(cardWork(data)));
