import vue from '@vitejs/plugin-vue';
import { defineConfig } from 'vite';

const isCustomElement = (tag) => tag.startsWith('homeleg-');

export default defineConfig({
  plugins: [vue({ template: { compilerOptions: { isCustomElement } } })],
  worker: { format: 'es' },
});
