import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { Redirect, Route, Switch } from 'wouter';
import { ServerRefusal } from '../shared/api/request.ts';
import { UnitChoiceProvider } from '../shared/units/unit-choice.tsx';
import { JobFrame } from './job-frame.tsx';
import { JobsPage } from './jobs-page.tsx';
import { NotFound } from './not-found.tsx';

/** A refusal is an answer: asking again changes nothing. A server that is down is asked twice more. */
const queries = new QueryClient({
  defaultOptions: {
    queries: {
      retry: (count, reason) => !(reason instanceof ServerRefusal) && count < 2,
      networkMode: 'always',
    },
    mutations: { retry: false, networkMode: 'always' },
  },
});

export function App() {
  return (
    <QueryClientProvider client={queries}>
      <UnitChoiceProvider>
        <Switch>
          <Route path="/">
            <Redirect to="/jobs" replace />
          </Route>
          <Route path="/jobs">
            <JobsPage />
          </Route>
          <Route path="/jobs/:id/:stage?">
            {({ id, stage }) => <JobFrame key={id} id={id} stage={stage ?? null} />}
          </Route>
          <Route>
            <NotFound />
          </Route>
        </Switch>
      </UnitChoiceProvider>
    </QueryClientProvider>
  );
}
