import { Component, type ReactNode } from 'react';
import { Trouble } from '../shared/ui/trouble.tsx';

interface State {
  readonly reason: unknown;
}

/** A stage that breaks breaks alone: the navigation and the person's edits live on. */
export class StageErrors extends Component<{ readonly children: ReactNode }, State> {
  override state: State = { reason: null };

  static getDerivedStateFromError(reason: unknown): State {
    return { reason };
  }

  override render() {
    if (this.state.reason === null) return this.props.children;
    return (
      <Trouble tried="show this page" reason={this.state.reason} onRetry={() => window.location.reload()} />
    );
  }
}
