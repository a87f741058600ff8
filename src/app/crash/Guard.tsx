import { Component, type ReactNode } from 'react';

interface GuardProps {
  readonly children: ReactNode;
  /** What stands in its place when it cannot be shown. */
  readonly instead: (error: unknown, again: () => void) => ReactNode;
  /** When this is another one it is tried again, as a job that was changed. */
  readonly of?: unknown;
  readonly onBroken?: () => void;
}

interface GuardState {
  readonly broken?: undefined | { readonly error: unknown };
}

/** Keeps what breaks within it from taking the rest of the page along. A class, as React has no other way to catch what a rendering throws. */
export class Guard extends Component<GuardProps, GuardState> {
  override state: GuardState = {};

  static getDerivedStateFromError(error: unknown): GuardState {
    return { broken: { error } };
  }

  override componentDidCatch() {
    this.props.onBroken?.();
  }

  override componentDidUpdate(before: GuardProps) {
    if (this.state.broken && before.of !== this.props.of) this.again();
  }

  private readonly again = () => this.setState({ broken: undefined });

  override render() {
    const { broken } = this.state;
    return broken ? this.props.instead(broken.error, this.again) : this.props.children;
  }
}
