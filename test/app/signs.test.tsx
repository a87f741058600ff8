// @vitest-environment jsdom
import { render } from '@testing-library/react';
import { expect, it } from 'vitest';
import { Signs } from '../../src/app/figures/Signs.tsx';

it('sets an index low, and leaves a power behind it', () => {
  const { container } = render(<Signs text="z = z_e + √(R_b² − u²) + x_12" />);
  expect(container.innerHTML).toBe('z = z<sub>e</sub> + √(R<sub>b</sub>² − u²) + x<sub>12</sub>');
});
