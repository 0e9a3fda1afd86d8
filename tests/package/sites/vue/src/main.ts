import { createApp } from 'vue';
import Club from './club-page.vue';

createApp(Club).mount('#page');
