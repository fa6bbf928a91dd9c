import { lazy, type ComponentType, type LazyExoticComponent } from 'react';
import type { StageId } from '../shared/stages.ts';

/** Each stage is loaded when it is opened. */
export const stagePages: Readonly<Record<StageId, LazyExoticComponent<ComponentType>>> = {
  survey: lazy(() => import('../features/survey/survey-page.tsx')),
  limits: lazy(() => import('../features/limits/limits-page.tsx')),
  options: lazy(() => import('../features/options/options-page.tsx')),
  work: lazy(() => import('../features/work/work-page.tsx')),
  proof: lazy(() => import('../features/proof/proof-page.tsx')),
  record: lazy(() => import('../features/record/record-page.tsx')),
};
