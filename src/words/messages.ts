/* oxlint-disable max-lines -- A list. */
/** Every message and what is filled in, from the files in `assets/words/en`. Written by `npm run words`, not by hand. */
type Plain<Ids extends string> = Record<Ids, null>;
type Text = string | number;

export interface Messages {
  about: Plain<
    | 'title' | 'keys' | 'tryLevers' | 'playTitle' | 'modelTitle' | 'model' | 'privacyTitle' | 'privacy' | 'careTitle' | 'care' | 'creditsTitle' | 'credits' | 'honest'
  > & {
    'play': { speed: Text };
  };
  arrival: Plain<
    | 'onItsWay' | 'stuck' | 'again' | 'safe' | 'noScript' | 'framed' | 'alone'
  >;
  bench: Plain<
    | 'intro' | 'opening' | 'openFailed' | 'home-make' | 'home-fresh' | 'home-freshSentence' | 'home-freshHint' | 'home-file' | 'home-fileHint' | 'home-copy' | 'home-copyHint' | 'home-choose' | 'home-copyButton' | 'home-own' | 'home-none'
    | 'home-ride' | 'home-edit' | 'home-duplicate' | 'home-remove' | 'home-goOn' | 'home-drop' | 'leave-title' | 'leave-keep' | 'leave-drop' | 'keep-save' | 'keep-saved' | 'keep-unsaved' | 'keep-changed' | 'keep-faulty'
    | 'keep-private-window' | 'keep-disk-full' | 'keep-newer-version' | 'keep-blocked' | 'keep-failed' | 'edit-undo' | 'edit-redo' | 'edit-list' | 'edit-titleField' | 'edit-sentenceField' | 'edit-profile' | 'edit-road' | 'edit-placed'
    | 'edit-addPiece' | 'edit-addPlaced' | 'edit-earlier' | 'edit-later' | 'edit-duplicate' | 'edit-remove' | 'edit-nothing' | 'edit-wholeMetres' | 'edit-more' | 'edit-lesson' | 'edit-audience' | 'edit-everyone' | 'edit-children'
    | 'edit-seed' | 'edit-seedHint' | 'edit-passMark' | 'edit-aids' | 'zoom-title' | 'zoom-closer' | 'zoom-wider' | 'zoom-back' | 'zoom-on' | 'zoom-whole' | 'piece-flat' | 'piece-climb' | 'piece-pitch' | 'piece-descent' | 'piece-rollers'
    | 'piece-random-pitches' | 'piece-recorded' | 'place-stopLinesM' | 'place-winds' | 'place-surfaces' | 'place-hidden' | 'place-cues' | 'surface-gravel' | 'surface-grass' | 'surface-cobbles' | 'ownCue' | 'cueText' | 'field-lengthM'
    | 'field-slope' | 'field-waveM' | 'field-steepest' | 'field-gentlest' | 'field-pitchCount' | 'field-beforeEach' | 'field-fromM' | 'field-toM' | 'field-atM' | 'field-windMps' | 'field-sightM' | 'check-title' | 'check-good'
    | 'check-working' | 'check-goThere' | 'check-trim' | 'check-cannotRide' | 'check-surprising' | 'reference-title' | 'reference-intro' | 'reference-bike' | 'reference-rider' | 'reference-ask' | 'reference-long' | 'reference-failed'
    | 'reference-waits' | 'reference-time' | 'reference-lowest' | 'reference-shifts' | 'reference-worst' | 'reference-asksNothing' | 'reference-level' | 'reference-feet' | 'reference-cadenceLane' | 'reference-speedLane' | 'reference-best'
    | 'reference-ridden' | 'reference-legend' | 'reference-list' | 'compare-title' | 'compare-noCadence' | 'compare-notKept' | 'compare-keep' | 'compare-kept' | 'compare-forget' | 'compare-saveFirst' | 'compare-waits' | 'try-title'
    | 'try-from' | 'try-start' | 'try-ride' | 'try-hint' | 'share-title' | 'share-intro' | 'share-link' | 'share-copy' | 'share-copied' | 'share-copyFailed' | 'share-code' | 'share-tooLong' | 'share-file' | 'json-title' | 'json-intro'
    | 'json-field' | 'json-good' | 'json-bad' | 'opened-title' | 'opened-intro' | 'opened-keep' | 'opened-ride' | 'opened-leave' | 'opened-badTitle' | 'opened-keepCopy' | 'opened-climbed' | 'opened-fingerprint' | 'opened-reading'
    | 'opened-no' | 'road-title' | 'road-intro' | 'road-choose' | 'road-drop' | 'road-cancel' | 'road-cancelled' | 'road-refused' | 'road-quality' | 'road-grades-good' | 'road-grades-fair' | 'road-grades-poor' | 'road-notes'
    | 'road-questions' | 'road-options-join' | 'road-options-straight' | 'road-options-longest-part' | 'road-options-metres' | 'road-options-feet' | 'road-stretch' | 'road-profile' | 'road-whole' | 'road-titleField' | 'road-titleHint'
    | 'road-sentence' | 'road-make' | 'road-needsTitle' | 'road-timed' | 'road-working'
  > & {
    'named': { doing: Text; what: Text }; 'range': { low: Text; high: Text }; 'home-roadHint': { length: Text }; 'home-removed': { title: Text }; 'home-restored': { title: Text }; 'home-duplicated': { title: Text };
    'home-unsaved': { title: Text }; 'home-facts': { length: Text; steepest: Text }; 'leave-text': { title: Text }; 'edit-facts': { pitches: number; length: Text; climbed: Text }; 'edit-no': { number: Text; name: Text };
    'facts-sloped': { length: Text; slope: Text }; 'facts-rollers': { length: Text; slope: Text }; 'facts-random-pitches': { length: Text; count: Text; slope: Text }; 'wind': { way: 'head' | 'tail'; speed: Text };
    'wind-mps': { value: Text }; 'placed-stretch': { stretch: Text; what: Text }; 'hidden-sight': { sight: Text }; 'placed-sight': { sight: Text }; 'placed-cue': { at: Text; cue: Text }; 'reference-asRidden': { watts: Text };
    'reference-working': { share: Text }; 'reference-lowestAt': { rpm: Text; at: Text }; 'reference-worstIs': { steepest: Text; at: Text; rpm: Text }; 'reference-noPitch': { at: Text; steepest: Text };
    'reference-scale': { low: Text; high: Text }; 'reference-lane': { what: Text; range: Text }; 'reference-shift': { direction: 'easier' | 'harder'; at: Text; gear: Text }; 'compare-times': { rode: Text; from: Text; to: Text; best: Text };
    'compare-power': { how: 'same' | 'other' | 'helped' | 'unknown'; watts: Text; theirs: Text }; 'compare-withCadence': { from: Text; to: Text; rode: Text; gear: Text; cadence: Text };
    'compare-withSpeed': { from: Text; to: Text; rode: Text; gear: Text; speed: Text }; 'json-line': { line: Text }; 'opened-already': { title: Text }; 'road-reading': { share: Text };
    'road-facts': { length: Text; climbed: Text; steepest: Text; points: Text }; 'road-track': { track: Text }; 'road-hardest': { length: Text }; 'road-longest': { length: Text };
    'road-chosen': { length: Text; climbed: Text; steepest: Text }; 'road-flatter': { climbed: Text; steepest: Text; limit: Text };
  };
  bike: Plain<
    | 'intro' | 'bikes' | 'ownHint' | 'done' | 'motorTitle' | 'fact-motor-crank' | 'fact-motor-wheel' | 'fact-backPedal' | 'fact-mechanical' | 'fact-electronic' | 'own-title' | 'own-intro' | 'rings' | 'rings-hint' | 'gearing'
    | 'gearing-sprockets' | 'gearing-three' | 'gearing-three-wide' | 'gearing-five' | 'gearing-five-wide' | 'gearing-seven' | 'gearing-eight' | 'gearing-eight-wide' | 'gearing-fourteen' | 'hubSprocket' | 'hubSprocket-hint'
    | 'hubSprocket-wrong' | 'backPedalBrake' | 'hubRule' | 'motor' | 'motor-none' | 'motor-crank' | 'motor-wheel' | 'help' | 'battery' | 'battery-hint' | 'battery-wrong' | 'brakeSwitches' | 'way' | 'way-range' | 'way-each' | 'range'
    | 'range-hint' | 'count' | 'sprocketTeeth' | 'add' | 'tyre' | 'tyre-hint' | 'crank' | 'crank-hint' | 'crank-wrong' | 'mass' | 'mass-hint' | 'mass-wrong' | 'shifters' | 'shifters-mechanical' | 'shifters-electronic' | 'refuses'
    | 'lastGood' | 'problem-rings-unreadable' | 'problem-rings-order' | 'problem-sprockets-unreadable' | 'problem-sprocket-twice' | 'problem-sprockets-order' | 'problem-tyre-unreadable' | 'rider' | 'rider-way' | 'rider-way-feel'
    | 'rider-way-numbers' | 'rider-about-child-9' | 'rider-about-adult-new' | 'rider-about-adult-weekly' | 'rider-about-adult-strong' | 'rider-mass' | 'rider-mass-hint' | 'rider-mass-wrong' | 'rider-power' | 'rider-power-hint'
    | 'rider-power-wrong' | 'rider-low' | 'rider-low-hint' | 'rider-low-wrong' | 'rider-high' | 'rider-high-hint' | 'rider-high-wrong' | 'rider-narrow' | 'tap' | 'tap-intro' | 'tap-first' | 'tap-firstHint' | 'tap-stop' | 'tap-again'
    | 'tap-undo' | 'tap-undone' | 'tap-too-few' | 'tap-too-short' | 'tap-too-slow' | 'tap-too-fast' | 'tap-unsteady' | 'tap-unchanged' | 'kit' | 'kit-intro' | 'jersey' | 'jersey-orange' | 'jersey-berry' | 'jersey-blue' | 'jersey-green'
    | 'jersey-violet' | 'jersey-sun' | 'pattern' | 'pattern-plain' | 'pattern-band' | 'pattern-dots' | 'helmet' | 'helmet-holes' | 'helmet-star' | 'helmet-crest' | 'frame' | 'frame-usual' | 'frame-red' | 'frame-blue' | 'frame-green'
    | 'frame-plum'
  > & {
    'fact-tyre': { tyre: Text }; 'drawing': { rear: 'hub' | 'sprockets'; ringCount: number; rings: Text; sprockets: Text }; 'help-much': { ratio: number }; 'completed': { teeth: Text }; 'sprocket': { place: Text };
    'remove': { place: Text }; 'emptySprocket': { place: Text }; 'warning-capacity': { capacityTeeth: Text; usualTeeth: Text }; 'warning-big-step': { fromTeeth: Text; toTeeth: Text }; 'problem-too-many-rings': { count: Text };
    'problem-ring-size': { teeth: Text; leastTeeth: Text; mostTeeth: Text }; 'problem-sprocket-size': { teeth: Text; leastTeeth: Text; mostTeeth: Text }; 'problem-too-many-sprockets': { count: Text; most: Text };
    'problem-sprocket-count': { least: Text; most: Text }; 'problem-too-narrow': { count: Text; leastTeeth: Text; mostTeeth: Text }; 'problem-tyre-size': { tyreWidthMm: Text; beadSeatMm: Text }; 'tap-left': { seconds: Text };
    'tap-count': { count: number }; 'tap-found': { rpm: Text; low: Text; high: Text }; 'tap-slips': { missed: number; doubled: number };
  };
  cautions: Plain<
    | 'title' | 'outside' | 'short' | 'accept' | 'more' | 'all' | 'motor' | 'motorWheel' | 'motorPlaces' | 'motorPlacesHint' | 'motorReported'
  > & {
    'motorRule': { place: 'eu' | 'uk' | 'us' | 'california' | 'canada' | 'australia' | 'new-zealand' | 'japan'; watts: number; kmh: number; speed: Text; year: number; source: Text; yearText: Text };
  };
  charts: Plain<
    | 'title' | 'road' | 'gear' | 'cadence' | 'pressure' | 'shifts-title' | 'hint-gear' | 'hint-pressure' | 'legend-you' | 'legend-best' | 'legend-clean' | 'legend-fair' | 'legend-heavy' | 'legend-foot-down' | 'legend-chain-dropped'
    | 'zoom' | 'zoom-whole' | 'place' | 'nextShift' | 'lastShift' | 'watchHere' | 'drag' | 'jumps' | 'read-at' | 'read-best' | 'read-shift' | 'read-coasting' | 'read-standing' | 'table-summary' | 'table-shifts' | 'table-place'
    | 'table-slope' | 'table-gear' | 'table-cadence' | 'table-band' | 'table-pressure' | 'table-bestGear' | 'table-bestCadence' | 'table-begins' | 'table-change' | 'table-took' | 'table-load' | 'table-feel' | 'feel-clean' | 'feel-fair'
    | 'feel-heavy'
  > & {
    'desc': { shifts: number; length: Text }; 'descClosed': { length: Text }; 'shifts': { shifts: number }; 'hint-cadence': { low: Text; high: Text }; 'zoom-to': { audience: 'children' | 'everyone'; pitch: Text }; 'keys': { step: Text };
    'read-slope': { way: 'up' | 'down' | 'flat'; percent: Text }; 'pitch': { audience: 'children' | 'everyone'; pitches: number; pitch: number };
    'read-slopeNear': { way: 'up' | 'down' | 'flat'; percent: Text; audience: 'children' | 'everyone'; pitches: number; pitch: number; side: 'at' | 'after' | 'before'; metres: Text }; 'read-rpm': { rpm: Text };
    'read-band': { low: Text; high: Text }; 'read-pressure': { how: 'coast' | 'ease' | 'steady' | 'press'; percent: Text }; 'read-bestHere': { gear: Text; cadence: Text };
    'read-shiftSays': { kind: 'clean' | 'fair' | 'heavy'; direction: 'easier' | 'harder'; from: Text; to: Text }; 'table-places': { step: Text };
  };
  children: Plain<
    | 'title' | 'intro' | 'roads' | 'done' | 'how' | 'howTitle' | 'learnt' | 'nothingYet' | 'together' | 'wishes' | 'voice' | 'numbers' | 'beside' | 'more'
  >;
  clinic: Plain<
    | 'title' | 'intro' | 'back' | 'opening' | 'elsewhere' | 'goOnHere' | 'openFailed' | 'home-ready' | 'home-saved' | 'home-own' | 'home-teach' | 'home-teachHint' | 'home-join' | 'home-joinHint' | 'home-store' | 'home-storeHint'
    | 'home-ownHint' | 'home-sessions' | 'home-change' | 'home-forget' | 'home-forgetKeep' | 'home-forgetSure' | 'home-children' | 'home-everyone' | 'home-missing' | 'facts-ownBike' | 'go-title' | 'go-intro' | 'go-count' | 'go-fewer'
    | 'go-more' | 'go-onlyHandOut' | 'go-start' | 'minutes-two' | 'minutes-noneLeft' | 'form-title' | 'form-name' | 'form-nameHint' | 'form-rides' | 'form-ridesHint' | 'form-ownLevels' | 'form-attempts' | 'form-attemptsFewer'
    | 'form-attemptsMore' | 'form-seed' | 'form-seeds-same' | 'form-seeds-fresh' | 'form-bike' | 'form-ownBike' | 'form-rider' | 'form-byBike' | 'form-byFeel' | 'form-aids' | 'form-aidsNames-as-level' | 'form-aidsNames-none'
    | 'form-aidsNames-all' | 'form-shows' | 'form-showsNames-own-marks' | 'form-showsNames-group-picture' | 'form-showsNames-table' | 'form-order' | 'form-orders-rotate' | 'form-orders-free' | 'form-save' | 'form-saveAndGo'
    | 'form-problems' | 'form-noRide' | 'form-noTitle' | 'tabs-round' | 'tabs-picture' | 'tabs-report' | 'tabs-tablets' | 'tabs-label' | 'tablets-intro' | 'tablets-out-title' | 'tablets-out-hint' | 'tablets-back-title' | 'tablets-back-hint'
    | 'tablets-collect-title' | 'tablets-collect-hint' | 'round-next' | 'round-start' | 'round-skip' | 'round-later' | 'round-remove' | 'round-back' | 'round-give' | 'round-giveTitle' | 'round-giveSays' | 'round-giveKeep' | 'round-add'
    | 'round-addPlus' | 'round-undo' | 'round-keep' | 'round-line' | 'round-nobodyInLine' | 'round-away' | 'round-ridingSays' | 'round-rideAgain' | 'round-notNow' | 'round-marking' | 'round-notMarked' | 'round-debrief' | 'round-total'
    | 'round-nextRider' | 'round-goOn' | 'round-nobody' | 'round-nobodySays' | 'round-waiting' | 'round-done' | 'round-doneSays' | 'round-toPicture' | 'round-feel' | 'round-noLevel' | 'round-notKept' | 'round-fullRound' | 'round-taken'
    | 'round-addTitle' | 'round-addOwn' | 'round-addOwnHint' | 'round-addThis' | 'round-others' | 'remark-none' | 'picture-working' | 'picture-failed' | 'picture-none' | 'picture-closed' | 'picture-open' | 'picture-road'
    | 'picture-boards-where' | 'picture-boards-caught' | 'picture-boards-timing' | 'picture-boards-change' | 'picture-boards-table' | 'picture-label' | 'picture-talk' | 'picture-show' | 'picture-hide' | 'picture-guess' | 'picture-right'
    | 'picture-noPitch' | 'picture-noLines' | 'picture-ownRoads' | 'picture-tracks-development' | 'picture-tracks-cadenceRpm' | 'picture-legend-best' | 'picture-legend-middle' | 'picture-legend-lines' | 'picture-legend-bestLine'
    | 'picture-dots' | 'picture-never' | 'picture-timing-tooEarly' | 'picture-timing-aboutRight' | 'picture-timing-tooLate' | 'picture-changeSame' | 'picture-changeNone' | 'picture-first' | 'picture-last' | 'picture-question-where'
    | 'picture-question-caught' | 'picture-question-timing' | 'picture-question-change' | 'picture-question-table' | 'picture-answer-nobody' | 'picture-answer-noHill' | 'picture-answer-always' | 'picture-answer-often-late'
    | 'picture-answer-often-early' | 'picture-answer-often-mixed' | 'picture-answer-sometimes-late' | 'picture-answer-sometimes-early' | 'picture-answer-sometimes-mixed' | 'picture-table-rider' | 'picture-table-ride'
    | 'picture-table-attempt' | 'picture-table-total' | 'picture-table-pitches' | 'picture-table-none' | 'report-title' | 'report-intro' | 'report-names' | 'report-namesHint' | 'report-fileName' | 'report-print' | 'report-csv'
    | 'report-json' | 'report-remove' | 'report-sureTitle' | 'report-keep' | 'report-saveFirst' | 'report-removeSure' | 'report-sheet' | 'report-table' | 'report-pitch' | 'report-caught' | 'report-timing' | 'report-group' | 'report-best'
    | 'report-ready' | 'report-all' | 'report-footer'
  > & {
    'number': { count: number }; 'numberFirst': { count: number }; 'home-goOn': { plan: Text }; 'home-next': { name: Text; ridden: Text; all: Text }; 'home-waiting': { ridden: Text; all: Text };
    'home-session': { date: Text; riders: number; rides: number }; 'home-open-round': { plan: Text }; 'home-open-picture': { plan: Text }; 'home-open-report': { plan: Text }; 'facts': { count: number; bike: Text };
    'go-swap': { name: Text }; 'go-startHint': { riders: number; plan: Text }; 'minutes-who': { count: number; riders: number }; 'minutes-about': { minutes: number }; 'minutes-whoAbout': { count: number; riders: number; minutes: number };
    'minutes-tooLong': { most: Text }; 'minutes-attempts': { count: number; minutes: number }; 'minutes-road': { minutes: number; road: Text }; 'minutes-devices': { count: number; minutes: number }; 'minutes-left': { minutes: number };
    'minutes-leftBehind': { minutes: number; behind: number }; 'round-turn': { attempt: Text; all: Text }; 'round-startFor': { name: Text }; 'round-removeWho': { name: Text }; 'round-laterWho': { name: Text };
    'round-backWho': { name: Text }; 'round-chooseWho': { name: Text }; 'round-undoWho': { name: Text }; 'round-gone': { riders: Text }; 'round-left': { rides: number }; 'round-riding': { name: Text }; 'round-ridden': { name: Text };
    'remark-fine': { count: number }; 'remark-early': { pitch: Text; distance: Text }; 'remark-lateAfter': { pitch: Text; distance: Text }; 'remark-lateBefore': { pitch: Text; distance: Text }; 'remark-notFinished': { pitch: Text };
    'remark-never': { pitch: Text }; 'remark-earlyNoPlace': { pitch: Text }; 'remark-gear': { pitch: Text }; 'picture-apart': { rides: number }; 'picture-otherVersion': { rides: number }; 'picture-roadName': { rides: number; road: Text };
    'picture-rides': { rides: number; riders: number }; 'picture-caught': { all: number; pitch: Text; count: Text }; 'picture-wrong-late': { all: number; pitch: Text; count: Text };
    'picture-wrong-early': { all: number; pitch: Text; count: Text }; 'picture-wrong-mixed': { both: number; all: number; pitch: Text; early: Text; late: Text };
    'picture-ready': { groupSide: 'after' | 'before'; group: Text; bestSide: 'after' | 'before'; best: Text }; 'picture-neverReady': { bestSide: 'after' | 'before'; best: Text }; 'picture-stripDesc': { rides: number; length: Text };
    'picture-barOf-tooEarly': { all: number; count: Text }; 'picture-barOf-aboutRight': { all: number; count: Text }; 'picture-barOf-tooLate': { all: number; count: Text }; 'picture-pitch': { pitch: Text };
    'picture-caughtShort': { count: Text; all: Text }; 'picture-shares-late': { one: Text; other: Text }; 'picture-shares-early': { one: Text; other: Text }; 'picture-shares-mixed': { one: Text; other: Text };
    'picture-timingCount': { all: number; count: Text }; 'picture-change': { worse: number; who: 'riders' | 'pairs'; all: number; better: Text }; 'picture-changeSays': { better: Text; worse: Text; same: Text; chance: Text };
    'picture-bins': { low: Text; high: Text; count: Text }; 'picture-answer-caught': { all: number; hill: Text; count: Text }; 'picture-answer-where-late': { all: number; hill: Text; count: Text };
    'picture-answer-where-early': { all: number; hill: Text; count: Text }; 'picture-answer-where-mixed': { all: number; hill: Text; count: Text }; 'picture-answer-better': { who: 'riders' | 'pairs'; all: number; better: number };
    'picture-answer-hill': { hill: Text }; 'picture-table-rideNumber': { ride: Text }; 'report-sure': { rides: number }; 'report-rides': { rides: number; riders: number }; 'report-sentence': { sentence: Text };
    'report-before': { distance: Text }; 'report-after': { distance: Text }; 'report-attempts': { better: Text; worse: Text; same: Text; chance: Text };
  };
  common: Plain<
    | 'direction' | 'name' | 'promise' | 'nav-home' | 'nav-levels' | 'nav-children' | 'nav-bike' | 'nav-about' | 'nav-progress' | 'nav-gearcheck' | 'nav-settings' | 'nav-close' | 'nav-debrief' | 'nav-bench' | 'nav-road' | 'nav-two'
    | 'nav-clinic' | 'nav-join' | 'nav-collect' | 'nav-teach' | 'nav-skip' | 'coming-loading' | 'coming-failed' | 'coming-tryAgain' | 'health-not-fetched' | 'ladder-everyone' | 'ladder-children' | 'riding-loading' | 'riding-paused'
    | 'riding-on' | 'bike-kids-20-1x7' | 'bike-kids-24-1x8' | 'bike-town-1x9' | 'bike-kids-20-hub-3' | 'bike-town-hub-3' | 'bike-town-hub-7' | 'bike-trekking-hub-8-crank' | 'bike-trekking-1x10-crank' | 'bike-town-hub-7-wheel'
    | 'bike-trekking-3x8' | 'bike-road-2x11' | 'bike-gravel-1x12' | 'bike-own'
  > & {
    'profile': { steepest: Text }; 'bike-gears': { where: 'single' | 'hub' | 'both' | 'sprockets'; rear: Text; rings: Text }; 'unit-kmh': { value: Text }; 'unit-mph': { value: Text }; 'unit-m': { value: Text }; 'unit-ft': { value: Text };
    'unit-km': { value: Text }; 'unit-mi': { value: Text }; 'unit-percent': { value: Text }; 'gear-in-hub': { number: Text; of: Text };
  };
  cues: Plain<
    | 'hill-ahead' | 'two-easier-now' | 'one-at-a-time' | 'harder-again' | 'hold-rhythm' | 'ride-over' | 'straight-chain' | 'stop-ahead' | 'wind-ahead' | 'gravel-ahead' | 'look-far' | 'last-pitch' | 'easier-lever' | 'harder-lever'
  > & {
    'ease-then-shift': { gears: 'hub' | 'sprockets'; motor: 'pulls' | 'none' }; 'rest-on-the-way-up': { gears: 'hub' | 'sprockets'; motor: 'pulls' | 'none' }; 'small-ring': { gears: 'hub' | 'sprockets' };
    'big-ring': { gears: 'hub' | 'sprockets' }; 'easy-before-stop': { gears: 'hub' | 'sprockets' };
  };
  debrief: Plain<
    | 'guess-title' | 'guess-openQuestion' | 'guess-why' | 'guess-skip' | 'guess-working' | 'guess-notMarked' | 'guess-matchedKind' | 'guess-differedKind' | 'guess-noPitch' | 'end-passed' | 'end-not-yet' | 'end-ridden' | 'end-explain'
    | 'stamp-early' | 'stamp-soft' | 'stamp-smooth' | 'stampState-earned' | 'stampState-not-yet' | 'stampState-not-asked' | 'well-title' | 'well-finished' | 'well-cadence' | 'well-foresight' | 'well-easing' | 'well-chainLine'
    | 'well-economy' | 'change-title' | 'change-nothing' | 'next-title' | 'next-again' | 'next-onwardsNone' | 'next-easier-level' | 'cards-title' | 'card-needed' | 'card-before' | 'card-worst' | 'card-bestStays' | 'card-asksNothing'
    | 'card-footDown' | 'card-watch' | 'card-pictureDesc' | 'card-table' | 'card-who' | 'card-you' | 'card-best' | 'card-where' | 'marks-title' | 'marks-total' | 'asks-cadence' | 'asks-foresight' | 'asks-easing' | 'asks-chainLine'
    | 'asks-economy' | 'noMark' | 'noMark-cadence' | 'noMark-foresight' | 'noMark-easing' | 'noMark-chainLine' | 'noMark-economy' | 'level-strong' | 'level-good' | 'level-onTheWay' | 'level-start' | 'perfect' | 'small' | 'leftAlone'
    | 'better' | 'better-below-band' | 'better-above-band' | 'better-coasted' | 'better-coasted-hub' | 'better-overloaded-pitch' | 'better-early-pitch' | 'better-foot-down-pitch' | 'better-heavy-shift' | 'better-heavy-shift-hub'
    | 'better-heavy-shift-motor' | 'better-waited-shift' | 'better-crossed' | 'better-many-shifts' | 'better-undone' | 'doing-title' | 'doing-again' | 'doing-watch' | 'doing-print' | 'doing-saveRide' | 'doing-savePicture'
    | 'doing-pictureFailed' | 'doing-backToGroup' | 'doing-backToBench' | 'doing-besideRoad' | 'differs' | 'closed' | 'saved-saving' | 'saved-saved' | 'saved-not-saved' | 'notSaved-private-window' | 'notSaved-disk-full'
    | 'notSaved-connection-lost' | 'notSaved-newer-version' | 'notSaved-blocked' | 'notSaved-hangs' | 'notSaved-corrupt' | 'notSaved-somebody-else' | 'notSaved-trial' | 'notSaved-not-judged' | 'notSaved-not-fetched' | 'notSaved-localBackup'
    | 'print-title' | 'print-legend'
  > & {
    'pitch': { pitches: number; pitch: number }; 'pitch-begins': { pitches: number; pitch: number }; 'pitch-title': { pitches: number; pitch: number }; 'near': { side: 'at' | 'after' | 'before'; metres: Text };
    'aim': { side: 'at' | 'after' | 'before'; metres: Text }; 'gears': { gears: number }; 'made-gears': { made: number }; 'seconds': { seconds: number }; 'changes': { changes: number };
    'some-of': { changes: number; which: 'all' | 'some'; heavy: number }; 'advice': { gears: number; side: 'at' | 'after' | 'before'; metres: Text; rest: 'some' | 'none' }; 'timing': { timing: 'too-early' | 'too-late' | 'about-right' };
    'mark': { mark: 'cadence' | 'foresight' | 'easing' | 'chainLine' | 'economy' }; 'mark-within': { mark: 'cadence' | 'foresight' | 'easing' | 'chainLine' | 'economy' }; 'guess-question': { pitches: number; pitch: number };
    'guess-share': { percent: Text }; 'guess-matched': { timing: 'too-early' | 'too-late' | 'about-right' }; 'guess-differed': { timing: 'too-early' | 'too-late' | 'about-right'; guess: 'too-early' | 'too-late' | 'about-right' };
    'guess-told': { timing: 'too-early' | 'too-late' | 'about-right' }; 'guess-where': { own: 'never' | 'at' | 'after' | 'before'; ownMetres: Text; best: 'never' | 'at' | 'after' | 'before'; bestMetres: Text };
    'guess-stepsBefore': { needed: number; made: number }; 'needed': { needed: number }; 'guess-slowest': { own: Text; best: Text };
    'change-late-pitch': { pitches: number; pitch: number; gears: number; side: 'at' | 'after' | 'before'; metres: Text; rest: 'some' | 'none'; how: 'slightly' | 'clearly' };
    'change-stayed': { pitches: number; pitch: number; gears: number; side: 'at' | 'after' | 'before'; metres: Text; rest: 'some' | 'none' };
    'change-early-pitch': { pitches: number; pitch: number; side: 'at' | 'after' | 'before'; metres: Text; how: 'slightly' | 'clearly' };
    'change-few-steps': { pitches: number; pitch: number; made: number; gears: number; which: 'few' | 'hard' };
    'change-wrong-way': { pitches: number; pitch: number; gears: number; side: 'at' | 'after' | 'before'; metres: Text; rest: 'some' | 'none' };
    'change-pushed': { pitches: number; pitch: number; gears: number; side: 'at' | 'after' | 'before'; metres: Text; rest: 'some' | 'none' };
    'change-foot-down': { pitches: number; pitch: number; gears: number; side: 'at' | 'after' | 'before'; metres: Text; rest: 'some' | 'none' }; 'change-ease': { changes: number; which: 'all' | 'some'; heavy: number };
    'change-ease-hub': { changes: number; which: 'all' | 'some'; heavy: number }; 'change-ease-motor': { changes: number; which: 'all' | 'some'; heavy: number };
    'change-ease-motor-hub': { changes: number; which: 'all' | 'some'; heavy: number }; 'change-stood-still': { changes: number; which: 'all' | 'some'; heavy: number }; 'change-coasted': { seconds: number; place: Text };
    'change-coasted-hub': { seconds: number; place: Text }; 'change-slow-legs': { seconds: number; place: Text }; 'change-fast-legs': { seconds: number; place: Text }; 'change-crossed': { seconds: number; place: Text };
    'change-fidget': { changes: number; needed: number }; 'change-dawdle': { times: Text }; 'next-onwards': { level: Text }; 'card-steep': { percent: Text; length: Text }; 'card-ofMade': { made: number; before: Text };
    'card-worstPair': { own: Text; best: Text }; 'card-bestDoes': { gears: number; side: 'at' | 'after' | 'before'; metres: Text; which: 'all' | 'none' | 'some'; before: number };
    'card-timing': { timing: 'too-early' | 'too-late' | 'about-right' }; 'card-tendency': { timing: 'too-early' | 'too-late' | 'about-right' }; 'card-picture': { pitches: number; pitch: number }; 'marks-passed': { pass: Text };
    'marks-notYet': { pass: Text }; 'hold-weakest': { mark: 'cadence' | 'foresight' | 'easing' | 'chainLine' | 'economy'; most: Text }; 'hold-pace': { times: Text; share: Text }; 'hold-tooSlow': { times: Text };
    'hold-lessonMissing': { mark: 'cadence' | 'foresight' | 'easing' | 'chainLine' | 'economy'; atLeast: Text }; 'hold-markMissing': { mark: 'cadence' | 'foresight' | 'easing' | 'chainLine' | 'economy'; atLeast: Text };
    'more': { more: number }; 'why-below-band': { seconds: number; from: Text; rpm: Text }; 'why-above-band': { seconds: number; from: Text; rpm: Text }; 'why-coasted': { seconds: number; from: Text };
    'why-overloaded-pitch': { pitches: number; pitch: number; percent: Text }; 'why-early-pitch': { pitches: number; pitch: number; percent: Text }; 'why-foot-down-pitch': { pitches: number; pitch: number };
    'why-heavy-shift': { derailleur: 'front' | 'rear'; from: Text; percent: Text }; 'why-waited-shift': { from: Text }; 'why-crossed': { seconds: number; from: Text }; 'why-many-shifts': { changes: number; needed: number };
    'why-undone': { from: Text }; 'doing-next': { level: Text }; 'freshPatch': { lesson: Text }; 'print-subtitle': { level: Text; bike: Text; rider: Text }; 'print-marks': { total: Text };
    'print-pitchTitle': { pitches: number; pitch: number }; 'print-pitch': { made: number; before: Text; own: Text; best: Text; needed: Text };
  };
  debriefChildren: Plain<
    | 'guess-title' | 'guess-openQuestion' | 'guess-why' | 'guess-skip' | 'guess-working' | 'guess-notMarked' | 'guess-matchedKind' | 'guess-differedKind' | 'guess-noPitch' | 'guess-slowest' | 'end-passed' | 'end-not-yet' | 'end-ridden'
    | 'end-explain' | 'well-title' | 'well-finished' | 'well-cadence' | 'well-foresight' | 'well-easing' | 'well-chainLine' | 'well-economy' | 'change-title' | 'change-stood-still' | 'change-dawdle' | 'change-nothing' | 'next-title'
    | 'next-again' | 'next-onwardsNone' | 'next-easier-level' | 'cards-title' | 'card-needed' | 'card-before' | 'card-worst' | 'card-bestStays' | 'card-asksNothing' | 'card-footDown' | 'card-watch' | 'card-table' | 'asks-cadence'
    | 'asks-foresight' | 'asks-easing' | 'asks-chainLine' | 'asks-economy' | 'noMark-cadence' | 'noMark-foresight' | 'noMark-easing' | 'noMark-chainLine' | 'noMark-economy' | 'hold-tooSlow' | 'level-strong' | 'level-good' | 'level-onTheWay'
    | 'level-start' | 'perfect' | 'small' | 'leftAlone' | 'better-below-band' | 'better-above-band' | 'better-coasted' | 'better-coasted-hub' | 'better-overloaded-pitch' | 'better-early-pitch' | 'better-foot-down-pitch'
    | 'better-heavy-shift' | 'better-heavy-shift-hub' | 'better-heavy-shift-motor' | 'better-waited-shift' | 'better-crossed' | 'better-many-shifts' | 'better-undone' | 'closed'
  > & {
    'pitch': { pitches: number; pitch: Text }; 'pitch-begins': { pitches: number; pitch: Text }; 'pitch-title': { pitches: number; pitch: Text }; 'near': { side: 'at' | 'after' | 'before'; metres: Text };
    'aim': { side: 'at' | 'after' | 'before'; metres: Text }; 'gears': { gears: number }; 'made-gears': { made: number }; 'seconds': { seconds: number }; 'heavy-shifts': { heavy: number };
    'timing': { timing: 'too-early' | 'too-late' | 'about-right' }; 'mark': { mark: 'cadence' | 'foresight' | 'easing' | 'chainLine' | 'economy' }; 'guess-question': { pitches: number; pitch: Text };
    'guess-matched': { timing: 'too-early' | 'too-late' | 'about-right' }; 'guess-differed': { timing: 'too-early' | 'too-late' | 'about-right'; guess: 'too-early' | 'too-late' | 'about-right' };
    'guess-where': { own: 'never' | 'at' | 'after' | 'before'; ownMetres: Text; best: 'never' | 'at' | 'after' | 'before'; bestMetres: Text }; 'guess-stepsBefore': { needed: number; made: number }; 'needed-gears': { needed: number };
    'advice': { ready: number; side: 'at' | 'after' | 'before'; metres: Text }; 'ready-gears': { ready: number };
    'change-late-pitch': { pitches: number; pitch: Text; ready: number; side: 'at' | 'after' | 'before'; metres: Text; how: 'slightly' | 'clearly' };
    'change-stayed': { pitches: number; pitch: Text; ready: number; side: 'at' | 'after' | 'before'; metres: Text };
    'change-early-pitch': { pitches: number; pitch: Text; side: 'at' | 'after' | 'before'; metres: Text; how: 'slightly' | 'clearly' };
    'change-few-steps': { made: number; pitches: number; pitch: Text; which: 'few' | 'hard'; gears: number }; 'change-wrong-way': { pitches: number; pitch: Text; ready: number; side: 'at' | 'after' | 'before'; metres: Text };
    'change-pushed': { pitches: number; pitch: Text; ready: number; side: 'at' | 'after' | 'before'; metres: Text }; 'change-foot-down': { pitches: number; pitch: Text; ready: number; side: 'at' | 'after' | 'before'; metres: Text };
    'change-ease': { heavy: number }; 'change-ease-hub': { heavy: number }; 'change-ease-motor': { heavy: number }; 'change-ease-motor-hub': { heavy: number }; 'change-coasted': { seconds: number; place: Text };
    'change-coasted-hub': { seconds: number; place: Text }; 'change-slow-legs': { seconds: number; place: Text }; 'change-fast-legs': { seconds: number; place: Text }; 'change-crossed': { seconds: number; place: Text };
    'change-fidget': { changes: number; needed: number }; 'next-onwards': { level: Text }; 'card-bestDoes': { gears: number; side: 'at' | 'after' | 'before'; metres: Text };
    'card-timing': { timing: 'too-early' | 'too-late' | 'about-right' }; 'card-tendency': { timing: 'too-early' | 'too-late' | 'about-right' }; 'card-picture': { pitches: number; pitch: Text };
    'hold-weakest': { mark: 'cadence' | 'foresight' | 'easing' | 'chainLine' | 'economy'; most: Text }; 'hold-pace': { share: Text };
    'hold-lessonMissing': { mark: 'cadence' | 'foresight' | 'easing' | 'chainLine' | 'economy'; atLeast: Text }; 'hold-markMissing': { mark: 'cadence' | 'foresight' | 'easing' | 'chainLine' | 'economy'; atLeast: Text };
    'why-below-band': { seconds: number; from: Text }; 'why-above-band': { seconds: number; from: Text }; 'why-coasted': { seconds: number; from: Text }; 'why-overloaded-pitch': { pitches: number; pitch: Text };
    'why-early-pitch': { pitches: number; pitch: Text }; 'why-foot-down-pitch': { pitches: number; pitch: Text }; 'why-heavy-shift': { from: Text }; 'why-waited-shift': { from: Text }; 'why-crossed': { seconds: number; from: Text };
    'why-many-shifts': { changes: number; needed: number }; 'why-undone': { from: Text }; 'print-pitchTitle': { pitches: number; pitch: Text }; 'print-pitch': { made: number; needed: Text; own: Text; best: Text; before: Text };
  };
  gearcheck: Plain<
    | 'intro' | 'road' | 'roads-ladder' | 'roads-own' | 'working' | 'failed' | 'again' | 'looking' | 'help-askFirst' | 'ask' | 'ask-label' | 'ask-button' | 'ask-working' | 'ask-nothing' | 'ask-which-end' | 'ask-impossible' | 'ask-same'
    | 'hear-back' | 'hear-front' | 'hear-and' | 'hear-to' | 'profile' | 'profile-below' | 'profile-above' | 'profile-nowhere' | 'stairs' | 'stairs-box' | 'stairs-hint' | 'sign-front' | 'sign-same' | 'sign-near' | 'sign-crossed' | 'table'
    | 'table-gear' | 'table-development' | 'table-step' | 'table-hands' | 'table-also' | 'others' | 'others-hint' | 'askFirst' | 'others-none' | 'others-fewer' | 'parts' | 'getsUp' | 'getsUp-riding' | 'minute' | 'minute-kept' | 'inBand'
    | 'yours' | 'changed-cassette' | 'changed-rings' | 'changed-both' | 'take' | 'trade-none' | 'trade-easier-lowest' | 'trade-harder-highest' | 'trade-smaller-steps' | 'trade-fewer-twins' | 'trade-fewer-shifts' | 'trade-less-capacity'
    | 'trade-harder-lowest' | 'trade-loses-highest' | 'trade-bigger-steps' | 'trade-more-twins' | 'trade-more-shifts' | 'trade-more-capacity' | 'compare' | 'compare-close' | 'compare-yours' | 'compare-band' | 'compare-figure'
    | 'compare-time' | 'compare-shifts' | 'compare-lowest' | 'rollOut' | 'rollOut-limit' | 'rollOut-none' | 'rollOut-own' | 'rollOut-metres' | 'rollOut-unreadable' | 'rollOut-ask' | 'rollOut-measured'
  > & {
    'you': { parts: Text; low: Text; high: Text }; 'perMinute': { rpm: Text }; 'caution': { rear: 'hub' | 'sprockets' }; 'lowest-short': { gear: Text; rpm: Text; length: Text; slope: Text; low: Text };
    'lowest-walks': { rpm: number; gear: Text; length: Text; slope: Text }; 'lowest-enough': { gear: Text; length: Text; slope: Text; rpm: Text }; 'help-mild': { gear: Text; rpm: Text };
    'help-reaches': { after: 'mild' | 'alone'; gear: Text }; 'help-none': { rear: 'hub' | 'sprockets'; needed: Text; own: Text; ring: Text; sprocket: Text }; 'help-tooSteep': { slope: Text; speed: Text }; 'minute-inBand': { rpm: Text };
    'minute-below': { from: Text; to: Text; rpm: Text; missing: Text }; 'highest-enough': { gear: Text }; 'highest-short': { places: number; seconds: number; gear: Text; rpm: Text }; 'ask-example': { rear: 'hub' | 'sprockets' };
    'ask-answer': { parts: Text; length: Text; rpm: Text; own: Text }; 'profile-desc': { length: Text; below: number; above: number }; 'stairs-desc': { gears: number; steps: Text }; 'stairs-really': { gears: number; different: Text };
    'stairs-eachOwn': { gears: number }; 'sign-rear': { rear: 'hub' | 'sprockets' }; 'table-speed': { rpm: Text }; 'hands': { ring: 'bigger' | 'same'; rear: 'harder' | 'easier' | 'same'; count: Text }; 'gear-crossed': { gear: Text };
    'also-same': { chain: 'crossed' | 'straight'; gear: Text }; 'also-near': { chain: 'crossed' | 'straight'; gear: Text }; 'others-trying': { count: number }; 'others-tried': { count: number }; 'others-all': { count: Text };
    'getsUp-walking': { time: Text }; 'minute-missing': { rpm: Text }; 'steepest': { length: Text }; 'take-this': { parts: Text }; 'capacity': { teeth: Text };
    'limit-sprocket': { have: Text; most: Text; derailleur: 'road' | 'long'; source: 'published' | 'practice' }; 'limit-capacity': { have: Text; most: Text; derailleur: 'road' | 'long'; source: 'published' | 'practice' };
    'limit-rings': { have: Text; most: Text; source: 'published' | 'practice' }; 'compare-this': { parts: Text }; 'compare-closeThis': { parts: Text }; 'compare-desc': { parts: Text }; 'compare-gear': { gear: Text; metres: Text };
    'rollOut-is': { gear: Text; metres: Text }; 'rollOut-option': { group: 'juniors' | 'under-16' | 'under-14' | 'under-12'; metres: Text; body: 'world-federation' | 'national-federation'; held: 'until' | 'year'; date: Text };
    'rollOut-source': { body: 'world-federation' | 'national-federation'; held: 'until' | 'year'; date: Text }; 'rollOut-relaxed': { year: Text }; 'rollOut-within': { limit: Text }; 'rollOut-beyond': { limit: Text; gear: Text };
    'rollOut-allBeyond': { limit: Text };
  };
  group: Plain<
    | 'plan-children-first-hour' | 'plan-adults-first-evening' | 'plan-children-check' | 'plan-adults-check' | 'check-everyone' | 'check-children' | 'check-everyone-hub' | 'check-children-hub' | 'check-everyone-crank-motor'
    | 'check-everyone-wheel-motor'
  > & {
    'colour': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' }; 'animal-badger': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' };
    'animal-beaver': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' }; 'animal-bee': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' };
    'animal-crane': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' }; 'animal-crow': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' };
    'animal-deer': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' }; 'animal-duck': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' };
    'animal-fox': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' }; 'animal-frog': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' };
    'animal-goat': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' }; 'animal-hare': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' };
    'animal-hedgehog': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' }; 'animal-heron': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' };
    'animal-horse': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' }; 'animal-lizard': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' };
    'animal-lynx': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' }; 'animal-marten': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' };
    'animal-mole': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' }; 'animal-mouse': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' };
    'animal-otter': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' }; 'animal-owl': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' };
    'animal-seal': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' }; 'animal-snail': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' };
    'animal-squirrel': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' }; 'animal-stork': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' };
    'animal-swan': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' }; 'animal-swift': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' };
    'animal-toad': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' }; 'animal-trout': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' };
    'animal-weasel': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' }; 'animal-wolf': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' };
    'animal-wren': { colour: 'amber' | 'blue' | 'brown' | 'green' | 'grey' | 'red' | 'violet' | 'white' };
  };
  handover: Plain<
    | 'code-pause' | 'code-play' | 'code-back' | 'code-next' | 'code-speed' | 'code-speed-slow' | 'code-speed-usual' | 'code-speed-fast' | 'code-big' | 'code-hint' | 'carry-making' | 'carry-tooBig' | 'carry-link' | 'carry-copy'
    | 'carry-copied' | 'carry-notCopied' | 'carry-onlyHere' | 'carry-file' | 'carry-longLink' | 'carry-site' | 'handOut-intro' | 'handOut-own' | 'ready-title' | 'ready-intro' | 'ready-done' | 'ready-open' | 'ready-wrong' | 'ready-unknown'
    | 'ready-again' | 'ready-allowCamera' | 'ready-keep' | 'ready-secure' | 'ready-secure-done' | 'ready-secure-wrong' | 'ready-offline' | 'ready-offline-done' | 'ready-offline-open' | 'ready-offline-wrong' | 'ready-camera'
    | 'ready-camera-done' | 'ready-camera-open' | 'ready-camera-wrong' | 'ready-keeping' | 'ready-keeping-done' | 'ready-keeping-open' | 'reader-ways' | 'reader-camera' | 'reader-picture' | 'reader-text' | 'reader-start' | 'reader-stop'
    | 'reader-loading' | 'reader-looking' | 'reader-noReader' | 'reader-video' | 'camera-not-secure' | 'camera-refused' | 'camera-none' | 'camera-in-use' | 'reader-choose' | 'reader-chooseHint' | 'reader-paste' | 'reader-take'
    | 'reader-reading' | 'reader-stopReading' | 'reader-stopped' | 'reader-failed' | 'reader-cut' | 'damaged-too-many-messages' | 'damaged-not-a-frame' | 'unreadable-not-a-packet' | 'unreadable-newer-version' | 'unreadable-damaged'
    | 'unreadable-nothing' | 'unreadable-too-big' | 'reader-wrongPlan' | 'join-intro' | 'join-found' | 'join-rides' | 'join-ownLevel' | 'join-missing' | 'join-join' | 'join-no' | 'join-here' | 'join-other' | 'join-go' | 'handBack-intro'
    | 'handBack-none' | 'handBack-marksOnly' | 'collect-intro' | 'collect-tablets' | 'collect-nobody' | 'collect-noSession' | 'column-tablet' | 'column-here' | 'column-missing' | 'column-since' | 'column-heard' | 'missing-nothing'
    | 'ago-now' | 'ago-neverSaid' | 'ago-never' | 'collect-notKept' | 'damaged-hint' | 'piece-not-json' | 'piece-not-a-record' | 'piece-newer-version' | 'piece-dirty-text' | 'piece-checksum' | 'piece-recording' | 'piece-file-head'
    | 'piece-too-long' | 'apart-hint' | 'apart-no-recording' | 'apart-unknown-level' | 'apart-other-level' | 'apart-other-setup' | 'apart-changed-bike' | 'apart-changed-rider' | 'apart-impossible-setup' | 'apart-too-long'
    | 'apart-not-finished' | 'apart-other-version' | 'apart-not-same-ride' | 'apart-other-marks' | 'conflict-same-id' | 'conflict-same-seq' | 'store-title' | 'store-intro' | 'store-take-title' | 'store-take-hint' | 'store-take-paste'
    | 'store-take-none' | 'store-give' | 'store-give-title' | 'store-give-hint' | 'store-give-onlyHere' | 'store-give-hide' | 'store-details' | 'store-fetch' | 'store-url' | 'store-urlHint' | 'store-database' | 'store-name'
    | 'store-password' | 'store-passwordHint' | 'store-plainHttp' | 'store-plainHere' | 'store-mixed' | 'store-badAddress' | 'store-consent' | 'store-consent-more' | 'store-forget' | 'store-what' | 'store-whatIs' | 'store-where'
    | 'store-soFar' | 'store-agreed' | 'store-look' | 'store-stop' | 'store-stopHint' | 'store-test' | 'store-testing' | 'store-works' | 'store-off' | 'store-notAsked' | 'store-nothing' | 'store-unreachable' | 'store-busy'
    | 'store-disk-full' | 'store-wrong-password' | 'store-not-allowed' | 'store-no-database' | 'store-bad-address' | 'store-not-a-store' | 'store-endless' | 'store-some-refused'
  > & {
    'size-bytes': { bytes: number }; 'size-kilobytes': { size: Text }; 'rides': { rides: number }; 'code-number': { number: Text; all: Text }; 'code-picture': { all: number; what: Text; number: Text }; 'code-jump': { number: Text };
    'handOut-what': { title: Text }; 'handOut-size': { codes: number; size: Text }; 'handOut-scanOne': { page: Text }; 'handOut-scanMany': { page: Text }; 'reader-noCode': { name: Text }; 'reader-read': { count: number; read: Text };
    'reader-missing': { count: number; numbers: Text }; 'damaged-checksum': { number: number }; 'damaged-newer-version': { number: number }; 'damaged-contradicts': { number: number }; 'reader-isPlan': { page: Text };
    'reader-isRides': { page: Text }; 'join-unknownLevel': { level: Text }; 'handBack-tablet': { tablet: Text }; 'missing-rides': { count: number; numbers: Text }; 'ago-minutes': { minutes: Text }; 'ago-hours': { hours: Text };
    'took': { fresh: number; known: number }; 'took-damaged': { pieces: number }; 'took-otherPlan': { rides: number }; 'checked': { rides: number }; 'otherVersion': { rides: number }; 'unknownLevel': { rides: number };
    'marksOnly': { rides: number }; 'withdrawn': { rides: number }; 'checking': { rides: Text }; 'damaged-title': { count: Text }; 'damaged-piece': { from: 'nobody' | 'tablet'; seq: number; tablet: Text }; 'apart-title': { count: Text };
    'apart-ride': { tablet: Text; seq: Text; name: Text }; 'apart-totals': { said: Text; found: Text }; 'conflict-title': { count: Text }; 'store-instead': { host: Text }; 'store-consent-sends': { typed: 'no' | 'yes'; host: Text };
    'store-agree': { typed: 'no' | 'yes'; host: Text }; 'store-offered-file': { host: Text }; 'store-offered-code': { host: Text }; 'store-offered-before': { host: Text }; 'store-goesTo': { host: Text };
    'store-sent': { rides: number; moment: Text }; 'store-line': { host: Text }; 'store-done': { rides: number }; 'store-sending': { left: Text }; 'store-again': { seconds: Text }; 'store-safe': { left: number };
  };
  hud: Plain<
    | 'cadence' | 'perMinute' | 'gear' | 'pressure' | 'legs-coast' | 'legs-ease' | 'legs-steady' | 'legs-press' | 'legs-too-slow' | 'legs-too-fast' | 'reserve' | 'distance' | 'chainFromAbove' | 'crossed' | 'chainOff' | 'motor-pulls'
    | 'motor-rests' | 'motor-empty' | 'stopLine' | 'outOfSight' | 'beside-best' | 'beside-last' | 'marksSoFar' | 'marks-cadence' | 'marks-easing' | 'marks-chainLine' | 'step-now' | 'step-soon' | 'pads' | 'pad-rear-easier'
    | 'pad-rear-harder' | 'pad-front-smaller' | 'pad-front-bigger' | 'pad-ease' | 'pad-press' | 'pad-brake' | 'pad-pause' | 'spoken-front-smaller' | 'spoken-front-bigger' | 'spoken-press' | 'spoken-brake' | 'spoken-pause'
    | 'remark-heavy-shift' | 'remark-shift-hung' | 'remark-shift-waiting' | 'remark-hub-knocked' | 'remark-motor-pulled' | 'remark-hub-waits' | 'remark-no-easier' | 'remark-no-harder' | 'remark-ring-easier' | 'remark-ring-harder'
    | 'remark-no-ring' | 'remark-refused-crossed' | 'remark-crossed' | 'remark-chain-dropped' | 'remark-foot-down' | 'remark-line-missed' | 'remark-battery-empty' | 'remark-reserve-empty' | 'ear-pitch-now' | 'ear-pitch-over'
    | 'ear-downhill' | 'ear-begin' | 'ear-nothing'
  > & {
    'roadAhead': { length: Text }; 'widened': { times: Text }; 'motor-too-fast': { speed: Text }; 'steeper': { times: Text }; 'move': { move: 'rear-easier' | 'rear-harder' | 'front-easier' | 'front-harder'; steps: number };
    'move-after': { move: 'rear-easier' | 'rear-harder' | 'front-easier' | 'front-harder'; steps: number }; 'move-then': { first: Text; second: Text }; 'step-in': { distance: Text }; 'spoken-rear-easier': { gears: 'hub' | 'sprockets' };
    'spoken-rear-harder': { gears: 'hub' | 'sprockets' }; 'spoken-ease': { gears: 'hub' | 'sprockets' }; 'ear-pitch-ahead': { distance: Text; slope: Text; length: Text }; 'ear-pitch-soon': { distance: Text };
    'ear-stop-ahead': { distance: Text }; 'ear-stop-soon': { distance: Text }; 'ear-move': { move: 'rear-easier' | 'rear-harder' | 'front-easier' | 'front-harder'; steps: Text }; 'ear-hint': { move: Text };
    'ear-hint-then': { first: Text; second: Text };
  };
  kept: Plain<
    | 'title' | 'save' | 'takeBack' | 'remove' | 'fileEverything' | 'fileReport' | 'failed' | 'sureTitle' | 'keep' | 'saveFirst' | 'removeSure' | 'deleted' | 'notDeleted' | 'savedPart' | 'notAFile' | 'tooBigFile' | 'takingBack'
    | 'stopTaking' | 'newerFile' | 'changedFile' | 'changedTitle' | 'changedSure' | 'changedLeave' | 'changedTake' | 'lookAtStore' | 'health-slow' | 'health-memory' | 'health-small-copy' | 'health-disk-full' | 'health-recordings-lost'
    | 'unfinished-olderLegs' | 'unfinished-kept' | 'unfinished-notKept'
  > & {
    'count': { rides: number }; 'sure': { rides: number }; 'savedAll': { rides: number }; 'stopped': { added: Text }; 'namesStore': { host: Text }; 'takenBack': { already: number; added: Text }; 'refused': { refused: number };
  };
  keys: Plain<
    | 'rear-easier' | 'rear-harder' | 'only-rear-easier' | 'only-rear-harder' | 'front-smaller' | 'front-bigger' | 'ease' | 'press' | 'coast' | 'brake' | 'pause' | 'name-Space' | 'name-Escape' | 'name-Enter' | 'name-Tab' | 'spoken-ArrowUp'
    | 'spoken-ArrowDown' | 'spoken-ArrowLeft' | 'spoken-ArrowRight'
  >;
  ladder: Plain<
    | 'title-apples-for-the-party' | 'sentence-apples-for-the-party' | 'cue-apples-for-the-party-1' | 'cue-apples-for-the-party-2' | 'cue-apples-for-the-party-3' | 'title-down-to-the-sea' | 'sentence-down-to-the-sea'
    | 'cue-down-to-the-sea-1' | 'cue-down-to-the-sea-2' | 'cue-down-to-the-sea-3' | 'title-home-by-lamplight' | 'sentence-home-by-lamplight' | 'cue-home-by-lamplight-1' | 'cue-home-by-lamplight-2' | 'cue-home-by-lamplight-3'
    | 'cue-home-by-lamplight-4' | 'cue-home-by-lamplight-5' | 'title-over-the-roots' | 'sentence-over-the-roots' | 'cue-over-the-roots-1' | 'cue-over-the-roots-2' | 'cue-over-the-roots-3' | 'cue-over-the-roots-4' | 'title-snow-on-top'
    | 'sentence-snow-on-top' | 'cue-snow-on-top-1' | 'cue-snow-on-top-2' | 'cue-snow-on-top-3' | 'title-click-before-the-hill' | 'sentence-click-before-the-hill' | 'title-three-little-hills' | 'sentence-three-little-hills'
    | 'title-feather-feet' | 'sentence-feather-feet' | 'title-stop-go-and-over-the-hill' | 'sentence-stop-go-and-over-the-hill' | 'title-change-while-you-wait' | 'sentence-change-while-you-wait' | 'cue-change-while-you-wait-1'
    | 'cue-change-while-you-wait-2' | 'title-look-who-is-there' | 'sentence-look-who-is-there' | 'cue-look-who-is-there-1' | 'title-two-levers' | 'sentence-two-levers' | 'title-hold-your-rhythm' | 'sentence-hold-your-rhythm'
    | 'title-one-pitch-announced' | 'sentence-one-pitch-announced' | 'title-rolling-road' | 'sentence-rolling-road' | 'title-soft-feet' | 'sentence-soft-feet' | 'title-ready-to-go' | 'sentence-ready-to-go' | 'title-straight-chain'
    | 'sentence-straight-chain' | 'title-wind-and-gravel' | 'sentence-wind-and-gravel' | 'title-round-the-bend' | 'sentence-round-the-bend' | 'title-ride-over' | 'sentence-ride-over' | 'title-ring-and-back' | 'sentence-ring-and-back'
    | 'title-stops-wind-and-a-secret' | 'sentence-stops-wind-and-a-secret' | 'title-only-you-and-the-road' | 'sentence-only-you-and-the-road' | 'title-let-the-motor-breathe' | 'sentence-let-the-motor-breathe' | 'cue-let-the-motor-breathe-1'
    | 'cue-let-the-motor-breathe-2' | 'cue-without-help-above-25-2'
  > & {
    'title-without-help-above-25': { speed: Text }; 'sentence-without-help-above-25': { speed: Text }; 'cue-without-help-above-25-1': { speed: Text };
  };
  levels: Plain<
    | 'intro' | 'own' | 'ridden' | 'next' | 'needs-derailleur' | 'needs-hub' | 'needs-motor' | 'needs-crank-motor' | 'needs-wheel-motor' | 'none' | 'patches' | 'free-title' | 'free-intro' | 'free-seed' | 'free-seedHint' | 'free-seedEmpty'
    | 'free-another' | 'free-hilliness' | 'free-hilly-0' | 'free-hilly-1' | 'free-hilly-2' | 'free-hilly-3' | 'free-hilly-4' | 'free-length' | 'free-ride' | 'free-link' | 'free-copy' | 'free-copied' | 'free-notCopied'
    | 'free-bad-unreadable' | 'free-bad-seed' | 'free-bad-hilliness'
  > & {
    'best': { total: Text }; 'best-not-passed': { total: Text }; 'length': { length: Text }; 'pitches': { count: number }; 'free-facts': { pitches: number; length: Text; steepest: Text; climbed: Text }; 'free-profile': { facts: Text };
    'free-bad-length': { shortest: Text; longest: Text };
  };
  names: Plain<
    | 'lesson-levers' | 'lesson-cadence' | 'lesson-easing' | 'lesson-look-ahead' | 'lesson-rolling' | 'lesson-chain-line' | 'lesson-ring-change' | 'lesson-ride-over' | 'lesson-hidden' | 'lesson-stop-gear' | 'lesson-wind-and-gravel'
    | 'lesson-everything' | 'lesson-check' | 'lesson-free' | 'sentence-check' | 'sentence-free' | 'patch-levers' | 'patch-cadence' | 'rider-child-9' | 'rider-adult-new' | 'rider-adult-weekly' | 'rider-adult-strong' | 'rider-own'
  >;
  party: Plain<
    | 'title' | 'all' | 'shared' | 'noClick' | 'tip-jolts' | 'tip-grinding' | 'tip-whirring' | 'tip-none' | 'again' | 'takeOver' | 'roads' | 'grownUps' | 'picture'
  > & {
    'carried': { apples: number }; 'found': { apples: number }; 'learnt': { lesson: Text }; 'next': { level: Text };
  };
  problems: Plain<
    | 'level-too-big' | 'level-empty' | 'level-not-a-level' | 'level-too-deep' | 'level-unknown-cue' | 'level-missing-kind' | 'level-no-weight' | 'level-gentler-than-steepest' | 'level-backwards' | 'level-seed-unused' | 'plan-too-big'
    | 'plan-not-a-plan' | 'plan-too-deep' | 'plan-unknown-kind' | 'plan-bad-format' | 'plan-invalid' | 'plan-dirty-text' | 'link-too-big' | 'link-not-packed' | 'link-not-shared' | 'link-damaged' | 'link-unknown-packing'
  > & {
    'found': { is: 'nothing' | 'list' | 'object' | 'value'; found: Text }; 'needed': { needed: 'number' | 'int' | 'string' | 'boolean' | 'array' | 'object' | 'other' };
    'schema-missing': { needed: 'number' | 'int' | 'string' | 'boolean' | 'array' | 'object' | 'other' }; 'schema-missing-allowed': { count: number; allowed: Text };
    'schema-wrong-type': { is: 'nothing' | 'list' | 'object' | 'value'; found: Text; needed: 'number' | 'int' | 'string' | 'boolean' | 'array' | 'object' | 'other' };
    'schema-endless': { needed: 'number' | 'int' | 'string' | 'boolean' | 'array' | 'object' | 'other' }; 'schema-not-allowed': { is: 'nothing' | 'list' | 'object' | 'value'; found: Text; count: number; allowed: Text };
    'schema-characters-most': { most: number; has: Text }; 'schema-characters-least': { least: number; has: Text }; 'schema-entries-most': { most: number; has: Text }; 'schema-entries-least': { least: number; has: Text };
    'schema-range-most': { found: Text; most: Text }; 'schema-range-least': { found: Text; least: Text }; 'slopes': { percent: Text; ratio: Text }; 'schema-bad-format': { is: 'nothing' | 'list' | 'object' | 'value'; found: Text };
    'schema-invalid': { is: 'nothing' | 'list' | 'object' | 'value'; found: Text }; 'schema-more': { count: number }; 'not-json': { where: 'line' | 'end' | 'unknown'; line: Text }; 'level-newer-schema': { schema: Text; readsUpTo: Text };
    'level-unknown-key': { key: Text }; 'level-unknown-kind': { is: 'nothing' | 'list' | 'object' | 'value'; found: Text }; 'level-too-short': { length: Text; least: Text }; 'level-too-long': { length: Text; most: Text };
    'level-pitches-too-dense': { pitchCount: number; least: Text; length: Text }; 'level-recorded-too-steep': { limit: Text }; 'level-beyond-end': { part: 'cue' | 'stretch'; length: Text }; 'level-overlap': { other: Text };
    'level-stop-too-near': { near: 'beyond-end' | 'end' | 'start' | 'line'; at: Text; length: Text; least: Text; last: Text }; 'level-cannot-climb': { from: Text; to: Text; slope: Text; gear: Text; walkS: Text };
    'takes-gear': { metres: Text }; 'takes-power': { watts: Text }; 'level-cannot-hold-cadence': { heldRpm: Text; slope: Text; at: Text; gear: Text; cadenceRpm: Text }; 'level-stop-uphill': { at: Text; slope: Text };
    'level-stop-downhill': { at: Text; slope: Text }; 'level-hidden-long': { length: Text; sight: Text }; 'level-hidden-pitch': { steepest: Text; foot: Text; sight: Text }; 'level-seed-moves-stop': { seed: Text; slope: Text };
    'plan-newer-schema': { schema: Text; readsUpTo: Text }; 'plan-unknown-key': { key: Text }; 'plan-unknown-bike': { first: Text; others: Text }; 'plan-unknown-rider': { first: Text; others: Text }; 'plan-unknown-level': { levelId: Text };
    'link-newer-version': { version: Text; readsUpTo: Text };
  };
  progress: Plain<
    | 'title' | 'intro' | 'road' | 'empty' | 'check-title' | 'check-what' | 'check-own-hub' | 'check-own-crank-motor' | 'check-own-wheel-motor' | 'check-ride-everyone' | 'check-ride-children' | 'check-group' | 'finding-need-first'
    | 'role-first' | 'role-same-day' | 'role-retest' | 'check-table' | 'limits-title' | 'limits' | 'marks-title' | 'marks-hint' | 'marks-which' | 'marks-all' | 'mark-cadence' | 'mark-foresight' | 'mark-easing' | 'mark-chainLine'
    | 'mark-economy' | 'mark-total' | 'marks-latest' | 'marks-none' | 'kind-ride' | 'kind-check' | 'kind-clinic' | 'marks-table' | 'table-date' | 'table-level' | 'table-kind' | 'table-role' | 'table-total' | 'table-passed' | 'table-yes'
    | 'table-no' | 'unmarked-title'
  > & {
    'older': { rides: number }; 'check-minutes': { everyone: Text; children: Text }; 'check-groupOf': { road: 'children' | 'hub' | 'hub-children' | 'crank-motor' | 'wheel-motor' | 'everyone'; bike: Text };
    'change': { way: 'up' | 'down' | 'same'; points: Text }; 'days': { days: number }; 'finding-need-second': { first: Text };
    'finding-same-day': { way: 'up' | 'down' | 'same'; points: Text; certain: 'yes' | 'no'; first: Text; latest: Text };
    'finding-retest': { days: number; way: 'up' | 'down' | 'same'; points: Text; certain: 'better' | 'worse' | 'no'; first: Text; latest: Text; chance: Text }; 'check-chance': { points: Text };
    'check-sides': { which: 'all' | 'few'; before: Text; after: Text; most: Text }; 'check-desc': { rides: number; first: Text; latest: Text }; 'marks-desc': { rides: number; name: Text; first: Text; latest: Text };
    'marks-shown': { shown: Text; all: Text }; 'standing-to-mark': { date: Text }; 'standing-unfinished': { date: Text }; 'standing-older': { date: Text };
  };
  ride: Plain<
    | 'failed-not-fetched' | 'failed-no-canvas' | 'failed-broken' | 'again' | 'pausedHint' | 'restart' | 'leave' | 'stage' | 'hands' | 'controls' | 'controlsPads' | 'watching' | 'watchOn' | 'backToDebrief' | 'steeper' | 'gentler'
    | 'step-rear-easier' | 'step-rear-harder' | 'step-ease' | 'done-rear-harder' | 'wrong-rear-easier' | 'wrong-rear-harder' | 'wrong-front-smaller' | 'wrong-front-bigger' | 'wrong-ease' | 'wrong-press' | 'wrong-coast' | 'wrong-brake'
    | 'wrong-pause' | 'instead' | 'hold' | 'pad' | 'holdPad' | 'skip' | 'trouble-ride-title' | 'trouble-ride' | 'trouble-again' | 'trouble-watching' | 'trouble-kept' | 'trouble-notKept' | 'trouble-goOn' | 'trouble-keep' | 'trouble-back'
    | 'trouble-page' | 'trouble-report' | 'trouble-reportHint' | 'trouble-reload' | 'trouble-close'
  > & {
    'title': { level: Text }; 'done-rear-easier': { gears: 'hub' | 'sprockets' }; 'done-ease': { gears: 'hub' | 'sprockets'; motor: 'pulls' | 'none' }; 'say-rear-easier': { key: Text }; 'say-rear-harder': { key: Text };
    'say-ease': { how: 'hold' | 'press'; key: Text };
  };
  road: Plain<
    | 'intro' | 'opening' | 'openFailed' | 'limits' | 'unknown' | 'bring-title' | 'bring-what' | 'bring-otherBike' | 'bring-teeth' | 'bring-files' | 'bring-metres' | 'bring-feet' | 'bring-privacy' | 'useless-no-times' | 'useless-too-sparse'
    | 'useless-no-cadence' | 'useless-cadence-stuck' | 'useless-no-road' | 'ride-powerUnknown' | 'ride-powerHelped' | 'ride-heightsUnknown' | 'ride-cadenceHalved' | 'ride-noPitch' | 'ride-keep' | 'ride-kept' | 'ride-already'
    | 'ride-notKept' | 'picture-own' | 'picture-best' | 'table-pitch' | 'table-first' | 'table-atFoot' | 'table-cadence' | 'table-best' | 'table-again' | 'table-unread' | 'table-ride' | 'place-none' | 'level-sentence' | 'all-title'
    | 'all-empty' | 'all-few' | 'all-byMonth' | 'all-month' | 'all-noMonth' | 'all-rides' | 'all-fall' | 'all-inBand' | 'all-check' | 'all-what' | 'all-whatHint' | 'all-forget'
  > & {
    'late-heights': { way: Text }; 'bring-bike': { parts: Text; tyre: Text }; 'bring-reading': { share: Text }; 'bring-judging': { done: Text; all: Text }; 'refused': { name: Text }; 'ride-title': { month: Text; length: Text };
    'ride-titleNoMonth': { length: Text }; 'ride-named': { title: Text; file: Text }; 'ride-pitchesOf': { title: Text }; 'ride-summary': { found: number; readable: Text }; 'ride-changes': { per: 'mile' | 'km'; changes: Text };
    'ride-inBand': { share: Text }; 'ride-power': { watts: Text }; 'ride-heights': { late: number }; 'picture-desc': { own: Text }; 'picture-descBest': { own: Text; best: Text }; 'table-name': { slope: Text; length: Text };
    'table-bestDone': { place: Text; share: Text }; 'table-rideThis': { pitch: Text }; 'table-inGame': { foresight: Text; total: Text }; 'table-notMade': { pitch: Text }; 'place-before': { metres: Text };
    'place-beforePm': { metres: Text; pm: Text }; 'place-after': { metres: Text }; 'place-afterPm': { metres: Text; pm: Text }; 'level-title': { slope: Text; length: Text }; 'all-mean': { rides: number; pitches: number };
    'all-counted': { pitches: number; rides: Text }; 'all-perMinute': { rpm: Text }; 'all-giveOrTake': { value: Text; pm: Text }; 'all-checks': { totals: Text }; 'all-numbered': { number: Text; title: Text }; 'all-parts': { parts: Text };
    'all-forgetThis': { ride: Text };
  };
  roadFile: Plain<
    | 'is-web-page-at-once' | 'is-web-page' | 'is-kml' | 'is-tcx' | 'is-json' | 'is-pdf' | 'is-picture' | 'is-fit' | 'is-binary' | 'is-other' | 'too-big' | 'empty' | 'packed' | 'packed-damaged' | 'packed-without' | 'packed-several'
    | 'doctype' | 'no-points' | 'no-length' | 'no-elevation' | 'backwards' | 'unreadable' | 'no-reader' | 'no-road' | 'time-backwards' | 'whole-metres' | 'all-equal'
  > & {
    'is-xml': { root: Text }; 'truncated': { line: Text }; 'encoding': { label: Text }; 'not-well-formed': { line: Text }; 'too-deep': { most: Text }; 'too-many-points': { most: Text }; 'no-such-track': { trackCount: number; track: Text };
    'no-readable-points': { pointCount: number }; 'only-waypoints': { waypointCount: number }; 'too-short': { length: Text; least: Text }; 'too-long': { length: Text }; 'no-readable-elevation': { pointCount: number };
    'several-tracks': { how: 'joined' | 'one'; trackCount: Text; track: Text }; 'holes': { holeCount: number; longest: Text; at: Text }; 'perhaps-feet-steep': { share: Text; steep: Text }; 'perhaps-feet-fast': { climb: Text };
    'salvaged': { pointCount: number; line: Text }; 'stops': { long: 'seconds' | 'minutes' | 'unknown'; count: Text; time: Text }; 'zero-elevations': { pointCount: Text }; 'impossible-points': { pointCount: number };
    'unreadable-points': { pointCount: Text }; 'unreadable-elevations': { pointCount: Text }; 'unwritten-elevations': { pointCount: Text }; 'elevation-spikes': { pointCount: Text }; 'cadence-halved': { rpm: Text };
    'cadence-stuck': { rpm: Text }; 'capped': { length: Text; limit: Text; steepest: Text }; 'sparse': { step: Text }; 'rounded-places': { step: Text }; 'elevation-missing': { share: Text }; 'holes-share': { share: Text };
    'bridged': { share: Text }; 'jumps': { jumpCount: number }; 'noisy': { noise: Text; points: Text; width: Text }; 'spikes': { share: Text };
  };
  settings: Plain<
    | 'title' | 'labels-theme' | 'labels-motion' | 'labels-beside' | 'labels-units' | 'labels-muted' | 'labels-music' | 'labels-paceRatio' | 'labels-autoEase' | 'labels-holdMode' | 'labels-leversKnown' | 'labels-childNumbers'
    | 'labels-childVoice' | 'labels-pads' | 'labels-byEar' | 'labels-oneHand' | 'labels-scanning' | 'options-theme-indoor' | 'options-theme-field' | 'options-motion-system' | 'options-motion-reduced' | 'options-motion-full'
    | 'options-beside-both' | 'options-beside-best' | 'options-beside-last' | 'options-beside-nobody' | 'options-music-auto' | 'options-music-on' | 'options-music-off' | 'options-units-metric' | 'options-units-imperial'
    | 'options-holdMode-hold' | 'options-holdMode-switch' | 'options-pads-auto' | 'options-pads-always' | 'options-pads-never' | 'look' | 'sound' | 'volumes-machine' | 'volumes-road' | 'volumes-cues' | 'ride' | 'help' | 'helpHint'
    | 'aids-nextStep' | 'aids-cues' | 'aids-pressureHint' | 'aids-chainView' | 'aids-clickTrack' | 'aids-liveMarks' | 'ways' | 'keysFor-left' | 'keysFor-right' | 'pad-title' | 'pad-hint' | 'pad-push' | 'keys' | 'keysHint' | 'pushKey'
    | 'labels-hand' | 'options-hand-left' | 'options-hand-right' | 'labels-scanS' | 'language' | 'language-device' | 'untranslated' | 'translated' | 'notFetched'
  > & {
    'aids-roadAhead': { length: Text }; 'labels-widerBand': { turns: Text }; 'seconds': { seconds: Text }; 'pad-button': { number: Text }; 'changeKey': { action: Text; key: Text };
  };
  start: Plain<
    | 'ride' | 'rideAgain' | 'byEar' | 'byEye' | 'picture' | 'newer' | 'loadNewer' | 'hint-children' | 'levels' | 'bike' | 'hint-about' | 'hint-progress' | 'hint-gearcheck' | 'hint-two' | 'hint-clinic' | 'hint-teach' | 'hint-bench'
    | 'unfinished-goOn' | 'unfinished-keep' | 'unfinished-letGo'
  > & {
    'hint-levels': { done: Text; all: Text }; 'hint-bike': { name: Text; gears: Text }; 'unfinished-title': { level: Text }; 'unfinished-turn': { level: Text }; 'unfinished-length': { minutes: number; seconds: number };
  };
  teach: Plain<
    | 'intro' | 'back' | 'audiences-adults' | 'audiences-mixed' | 'audiences-children' | 'sheets' | 'cards' | 'cardsHint' | 'home' | 'homeHint' | 'certificate' | 'certificateHint' | 'own' | 'fileName' | 'open' | 'openHint' | 'ownGone'
    | 'print' | 'change' | 'save' | 'done' | 'changing' | 'changeHint' | 'fields-title' | 'fields-minutes' | 'fields-level' | 'rideRoad' | 'toClinic' | 'noRoad' | 'parts-warmUp' | 'parts-say' | 'parts-road' | 'parts-question'
    | 'parts-drill' | 'parts-watch' | 'parts-end' | 'row-needs' | 'row-safe' | 'row-watch' | 'row-easier' | 'row-harder' | 'problems-too-big' | 'problems-not-json' | 'problems-not-a-session-plan' | 'problems-newer-schema'
    | 'problems-dirty-text' | 'moreCautions' | 'defers' | 'practice' | 'sources-adults' | 'sources-mixed' | 'sources-children' | 'homeSheet-title' | 'homeSheet-child' | 'homeSheet-childLines' | 'homeSheet-draw' | 'homeSheet-parents'
    | 'homeSheet-parentLines' | 'homeSheet-name' | 'certificateSheet-title' | 'certificateSheet-says' | 'certificateSheet-learnt' | 'certificateSheet-tick' | 'certificateSheet-date' | 'certificateSheet-coach' | 'card-cone-title'
    | 'card-cone-doing' | 'card-cone-needs' | 'card-cone-safe' | 'card-cone-watch' | 'card-cone-easier' | 'card-cone-harder' | 'card-soft-feet-title' | 'card-soft-feet-doing' | 'card-soft-feet-needs' | 'card-soft-feet-safe'
    | 'card-soft-feet-watch' | 'card-soft-feet-easier' | 'card-soft-feet-harder' | 'card-starting-gear-title' | 'card-starting-gear-doing' | 'card-starting-gear-needs' | 'card-starting-gear-safe' | 'card-starting-gear-watch'
    | 'card-starting-gear-easier' | 'card-starting-gear-harder' | 'card-talk-title' | 'card-talk-doing' | 'card-talk-needs' | 'card-talk-safe' | 'card-talk-watch' | 'card-talk-easier' | 'card-talk-harder' | 'road-20' | 'road-45' | 'road-60'
    | 'longer-adults' | 'lines-adults-warmUp' | 'lines-adults-say' | 'lines-adults-question' | 'lines-adults-drill' | 'lines-adults-watch' | 'lines-adults-end' | 'longer-mixed' | 'lines-mixed-warmUp' | 'lines-mixed-say'
    | 'lines-mixed-question' | 'lines-mixed-drill' | 'lines-mixed-watch' | 'lines-mixed-end' | 'longer-children' | 'lines-children-warmUp' | 'lines-children-say' | 'lines-children-question' | 'lines-children-drill' | 'lines-children-watch'
    | 'lines-children-end'
  > & {
    'min': { minutes: Text }; 'lengthFor': { length: Text; audience: Text }; 'planTitle': { audience: Text; minutes: Text }; 'road': { road: Text }; 'drillInPlan': { drill: Text };
  };
  two: Plain<
    | 'title' | 'intro' | 'road' | 'ride' | 'leave' | 'needsKeys' | 'noRelay' | 'way' | 'way-beside' | 'way-facing' | 'way-relay' | 'wayHint-beside' | 'wayHint-facing' | 'wayHint-relay' | 'count' | 'bike' | 'rider' | 'ownRider' | 'autoEase'
    | 'headStart' | 'keys-left' | 'keys-right' | 'pads-left' | 'pads-right' | 'mark-left' | 'mark-right' | 'gateIntro' | 'longWait' | 'waiting' | 'failed' | 'toGate' | 'afterTitle' | 'judging' | 'notJudged' | 'look' | 'again' | 'newSeries'
    | 'moveOn-beside' | 'moveOn-facing' | 'moveOn-relay' | 'other'
  > & {
    'name-beside': { rider: number }; 'name-facing': { rider: number }; 'name-relay': { rider: number }; 'roadWithGates': { gates: number; road: Text }; 'roadOfBoth': { road: Text }; 'leg': { road: Text; leg: Text; legs: Text };
    'gate': { rider: number }; 'riding': { road: Text }; 'headStartWait': { seconds: number }; 'series': { ride: Text; of: Text }; 'total': { total: Text }; 'together': { total: Text }; 'best': { rides: number; best: Text; all: Text };
  };
}
