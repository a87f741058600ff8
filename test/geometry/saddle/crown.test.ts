import { describe, expect, it } from 'vitest';
import { crownEdge } from '../../../geometry/saddle/crown.ts';
import { saddleOutline } from '../../../geometry/saddle/face.ts';
import { gaugeRadii, layGauges, nearestGauge } from '../../../geometry/saddle/gauges.ts';
import { bounds, pathLength, segmentEnd, segmentStart } from '../../../geometry/shape/index.ts';
import { solved, workedExample } from '../../solved.ts';

describe('the crown’s edge', () => {
  const a = { x: -28, y: -3.7 };
  const b = { x: 28, y: -2.6 };

  it('is an arc of the radius asked for, through both points, bulging up', () => {
    const edge = crownEdge([a, b], 380, -38, 38);
    if (edge?.kind !== 'arc') throw new Error('no arc');
    expect(edge.radius).toBe(380);
    for (const p of [a, b]) expect(Math.hypot(p.x - edge.centre.x, p.y - edge.centre.y)).toBeCloseTo(380, 9);
    expect(edge.centre.y).toBeGreaterThan(0);
    expect(segmentStart(edge).x).toBeCloseTo(-38, 9);
    expect(segmentEnd(edge).x).toBeCloseTo(38, 9);
  });

  it('is a line when it is flat', () => {
    const edge = crownEdge([a, b], 'flat', -38, 38);
    expect(edge?.kind).toBe('line');
  });

  it('is nothing when the radius cannot reach', () => {
    expect(crownEdge([a, b], 27, -38, 38)).toBeUndefined();
    expect(crownEdge([a, b], 30, -38, 38)).toBeUndefined();
  });
});

describe('the saddle', () => {
  it('is as long along its slot as the slot less the play, and shorter across by the slant', () => {
    const job = workedExample();
    const design = solved(job);
    const width = (look: 'along' | 'across') => {
      const box = bounds(saddleOutline(design, look));
      return box.maxX - box.minX;
    };
    expect(width('along')).toBeCloseTo(76 - 0.05, 9);
    expect(width('across')).toBeCloseTo((76 - 0.05) * Math.cos(Math.atan(design.saddleLine.slant)), 9);
    expect(pathLength(saddleOutline(design, 'along'))).toBeGreaterThan(152);
  });
});

describe('gauges', () => {
  it('lays every one that can span the strings, and finds the nearest', () => {
    const design = solved(workedExample());
    expect(design.gauges.map((g) => g.radius)).toEqual(gaugeRadii);
    // The best circle has 14.88 in: of the inch gauges 15 in is next to it.
    expect(design.nearestGauge.radius).toBeCloseTo(381, 9);
    for (const gauge of design.gauges) expect(gauge.worst).toBeGreaterThanOrEqual(design.nearestGauge.worst);
  });

  it('leaves out a gauge too tight to span them', () => {
    const points = [-190, -60, 60, 190].map((x) => ({ x, y: 0 }));
    expect(layGauges(points).map((g) => g.radius)).not.toContain(184.15);
    expect(nearestGauge(layGauges(points))?.radius).toBe('flat');
  });
});
