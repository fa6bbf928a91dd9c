import react from '@vitejs/plugin-react';
import { defaultClientConditions, defineConfig } from 'vite';
import { precompress } from './build/precompress.ts';

/** The workspace packages are bundled from their source, so that the app never lags behind a stale `dist`. */
const conditions = ['standstill-source', ...defaultClientConditions];

export default defineConfig({
  plugins: [react(), precompress()],
  resolve: { conditions },
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 800,
    // A module of our packages does nothing but define: what a page does not use of it stays out of the page.
    rolldownOptions: {
      treeshake: {
        moduleSideEffects: [{ test: /[\\/]packages[\\/][a-z]+[\\/]src[\\/]/, sideEffects: false }],
      },
    },
  },
  server: { proxy: { '/api': 'http://127.0.0.1:4780' } },
});
