import { type CSSProperties, type ReactNode, useMemo, useRef, useState } from 'react';
import type { Paper } from '../first/draw.ts';
import { firstWords as words } from '../first-words.ts';
import { roomy, three } from '../media.ts';
import type { Built } from '../state.ts';
import { useBenchState, useBuilt } from '../use-bench.ts';
import { useMedia } from '../use-media.ts';
import { useParts } from '../use-parts.ts';
import type { InSight, Over } from './Glass.tsx';
import { type PictureName, usualHeights } from './laying.ts';
import { closer, type Look, step } from './look.ts';
import { OnePicture } from './OnePicture.tsx';
import { roomOn, textHeight } from './room.ts';
import { Toolbar } from './Toolbar.tsx';
import { noTools, type Tool, type ToolState } from './tools/tools.ts';
import { useScreen } from './tools/use-screen.ts';
import { useKept } from './use-kept.ts';
import { useRoom } from './use-room.ts';
import { useSeenHeight } from './use-seen.ts';
import { ViewStrip } from './ViewStrip.tsx';

/** What is rendered anew with the last numbers that could be built. */
const OfBuilt = ({ children }: { children: (built: Built) => ReactNode }) => {
  const built = useBuilt();
  return built && children(built);
};

/** The sheet: the drawing of the last numbers that could be built, and above it what keeps these from being built. On the paper of the first drawing, where there was one. */
export const Sheet = ({ first }: { first?: Paper | undefined }) => {
  const paper = useRef<HTMLDivElement>(null);
  const size = useRoom(paper, first);
  const { width = 0, height = 0 } = size ?? {};
  const isRoomy = useMedia(roomy);
  /** Whether a number is typed on the drawing: it stays the same then, though a keyboard takes half of the window. */
  const [isTyping, setTyping] = useState(false);
  const hasThree = useKept(useMedia(three), isTyping);
  const isBuilt = useBenchState((state) => state.built !== undefined);
  const length = useBenchState((state) => state.built?.job.show.length ?? 'mm');
  const stale = useBenchState((state) => !state.solved.ok);
  const focus = useBenchState((state) => state.pointed ?? state.focus);
  const [heights, setHeights] = useState(usualHeights);
  /** How far heights were stretched before the drawing was shown at true size. */
  const [heightsBefore, setHeightsBefore] = useState(usualHeights);
  const [name, setName] = useState<PictureName>('three');
  const [looks, setLooks] = useState<Readonly<Partial<Record<PictureName, Look>>>>({});
  const [hasTools, setTools] = useState(false);
  const [toolState, setToolState] = useState<ToolState>(noTools);
  const [screen, measureScreen] = useScreen();
  const [isMeasuring, setMeasuring] = useState(false);
  /** Counts how often a view was brought in sight from here: the strip is then put up anew with it. */
  const [brought, setBrought] = useState(0);
  const [least, setLeast] = useState(first?.least ?? 0);
  const inSight = useRef<InSight>(undefined);
  const seen = useSeenHeight();
  const parts = useParts();
  const room = useMemo(() => roomOn({ width, height }, isRoomy, seen), [width, height, isRoomy, seen]);
  // Where there is room for one view at a time, it is one of them.
  const alone = name === 'three' ? 'above' : name;
  const picture = hasThree ? name : alone;
  const look = looks[picture];
  const isTrue = screen !== undefined && look?.scale === screen.pxPerMm && heights === 1;
  const onLook = (next: Look | undefined) => {
    // Seen whole again, its heights are as they were.
    if (next === undefined && isTrue) setHeights(heightsBefore);
    setLooks((now) => ({ ...now, [picture]: next }));
  };
  const onStep = (way: 1 | -1) => {
    if (inSight.current) onLook(closer(inSight.current.fitted, inSight.current.shown, step ** way));
  };
  const tools = {
    ...toolState,
    onChange: (change: Partial<ToolState>) => setToolState((now) => ({ ...now, ...change })),
  };
  const { tool } = tools;
  const onTool = (taken: Tool | undefined) => {
    tools.onChange({ tool: taken });
    // A gauge is laid across the guitar.
    if (taken !== 'gauge' || picture === 'three' || picture === 'tail') return;
    setName('tail');
    setBrought(brought + 1);
  };
  /** As large as the bridge itself; what stood in the middle of the frame stays there. */
  const showTrue = (scale: number) => {
    if (!isTrue) setHeightsBefore(heights);
    setHeights(1);
    onLook({ ...look, scale });
  };
  /** Another picture; at true size too, if this one is. */
  const show = (shownNow: PictureName) => {
    setName(shownNow);
    if (isTrue) setLooks((now) => ({ ...now, [shownNow]: { scale: screen.pxPerMm } }));
  };
  const onTrue = () => {
    if (isTrue) onLook(undefined);
    else if (screen === undefined) setMeasuring(true);
    else showTrue(screen.pxPerMm);
  };
  const over: Over | undefined =
    parts && tool && ((built, inFrame, box) => <parts.ToolOver {...{ tools, built, box }} shown={inFrame} />);
  const shown = { heights, focus, text: textHeight(isRoomy), room, onLook, inSight, over, onTyping: setTyping };
  return (
    <section className="sheet" aria-labelledby="sheet-title" data-stale={stale}>
      <h2 className="unseen" id="sheet-title">
        {words.sheet.label}
      </h2>
      {parts && <parts.SkipOn next={parts.heads.numbers} />}
      {parts && <parts.Problems />}
      {parts && <parts.Told />}
      {isBuilt && (
        <div className="line">
          <p>{words.sheet.lengths(length)}</p>
          {parts && <parts.Summary />}
          {parts && <parts.Refused />}
          {parts && <parts.Alternatives />}
        </div>
      )}
      {isBuilt && (hasThree || hasTools) && (
        <Toolbar
          {...{ heights, onStep, tool, onTool, isTrue, onTrue }}
          name={hasThree ? name : undefined}
          onName={show}
          onHeights={setHeights}
          isFitted={look === undefined}
          onFit={() => onLook(undefined)}
        />
      )}
      {/* The first drawing's style is another writing of the same. */}
      <div className="paper" ref={paper} style={{ '--least': `${least}px` } as CSSProperties} suppressHydrationWarning>
        {!isBuilt && <p className="none">{words.sheet.none}</p>}
        {size && (
          <OfBuilt>
            {(built) =>
              hasThree ? (
                <OnePicture
                  key={name}
                  {...shown}
                  built={built}
                  name={name}
                  look={looks[name]}
                  high={isRoomy ? height : 0}
                  onLeast={setLeast}
                />
              ) : (
                <ViewStrip
                  key={brought}
                  {...shown}
                  {...{ built, looks, hasTools }}
                  name={alone}
                  onName={show}
                  onTools={setTools}
                />
              )
            }
          </OfBuilt>
        )}
      </div>
      {parts && isTrue && <parts.TrueSize screen={screen} onAgain={() => setMeasuring(true)} />}
      {parts && tool && <OfBuilt>{(built) => <parts.ToolPanel {...{ tools, built }} />}</OfBuilt>}
      {parts && isMeasuring && (
        <parts.CardDialog
          pxPerMm={screen?.pxPerMm}
          onClose={() => setMeasuring(false)}
          onMeasured={(pxPerMm) => {
            measureScreen(pxPerMm);
            showTrue(pxPerMm);
            setMeasuring(false);
          }}
        />
      )}
    </section>
  );
};
