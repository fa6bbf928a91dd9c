import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app/app.tsx';
import './styles/index.css';

const place = document.getElementById('app');
if (!place) throw new Error('The page has no place for the app.');
createRoot(place).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
