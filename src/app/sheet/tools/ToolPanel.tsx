import { useMemo } from 'react';
import type { Built } from '../../store.ts';
import { GaugePanel } from './GaugePanel.tsx';
import { gaugeFor, layGauge } from './gauge.ts';
import { RulerPanel } from './RulerPanel.tsx';
import { ofDesign, type Tools } from './tools.ts';

/** What the tool in hand is set to, and what it reads. */
export const ToolPanel = ({ tools, built }: { tools: Tools; built: Built }) => {
  const { tool, onChange } = tools;
  const gauge = useMemo(() => tools.gauge ?? gaugeFor(built), [tools.gauge, built]);
  const laid = useMemo(() => layGauge(gauge, built), [gauge, built]);
  if (tool === 'gauge')
    return <GaugePanel {...{ built, laid }} chosen={gauge} onChosen={(now) => onChange({ gauge: now })} />;
  const ruled = ofDesign(tools.ruled, built);
  return <RulerPanel {...{ built, ruled }} onRuled={(now) => onChange({ ruled: now })} />;
};
