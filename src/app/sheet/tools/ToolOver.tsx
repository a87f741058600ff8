import { type RefObject, useMemo } from 'react';
import type { Built } from '../../store.ts';
import type { Fitted } from '../fit.ts';
import { GaugeOver } from './GaugeOver.tsx';
import { gaugeFor, layGauge } from './gauge.ts';
import { RulerOver } from './RulerOver.tsx';
import { ofDesign, type Tools } from './tools.ts';

/** What the tool in hand lays over the drawing. */
export const ToolOver = ({
  tools,
  built,
  shown,
  box,
}: {
  tools: Tools;
  built: Built;
  shown: Fitted;
  box: RefObject<HTMLElement | null>;
}) => {
  const { tool, gauge, onChange } = tools;
  const laid = useMemo(() => layGauge(gauge ?? gaugeFor(built), built), [gauge, built]);
  if (tool === 'gauge') return <GaugeOver {...{ shown, built, laid }} />;
  const ruled = ofDesign(tools.ruled, built);
  return <RulerOver {...{ shown, box, built, ruled }} onRuled={(now) => onChange({ ruled: now })} />;
};
