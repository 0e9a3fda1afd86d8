import { mount } from 'svelte';
import Club from './club.svelte';

mount(Club, { target: document.getElementById('page')! });
