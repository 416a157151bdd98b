<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
  <context>
    <name>aligner</name>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Drained, clean and dry inside</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Old oil that stays behind in the damper goes into the new level unseen, and dirt goes into the valves.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>common practice, no source</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>O-rings of the air fittings sound or new</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>They keep oil and air in even where no pressure is ever put on: an old ring weeps oil past the tube.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Openings in the tube sealed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The tube has openings where its air fitting sits: off the machine nothing closes them, and the oil runs out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Take the sealing off again before the fittings go on, or the legs never share their air.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Anti-dive unit tight, sealing rings new</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The unit's oil passage opens into the slider: a ring pinched here empties the leg slowly.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Brake fluid and fork oil are kept apart: one spoils the seals of the other.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Cartridge held and its bottom bolt tight</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Its bolt cannot be reached well with the oil in, and one that spins with the cartridge is not tight.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Bush, oil seal, clip and dust seal home</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The seal stands at the bottom end, under oil all the time: one that is not home leaks at once, over the brake.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Oil poured in, a little over</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>A level is set by drawing the excess off, which stops at the tube's end by itself; adding has to be measured.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Pumped slowly until no bubbles rise</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The damper holds air until it has been stroked full; the level falls as the air comes out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Pumped until the unit is full too</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The anti-dive passage fills later than the damper; air left in it makes the leg dive first and brake later.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Cartridge bled: rod drags evenly</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Stroke the rod until it drags the same all the way, up and down: a soft start to a stroke is air in the cartridge.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Left to settle, then fully compressed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Bubbles stand in stirred oil for some minutes and make the level look high; the air gap is read only after that, spring out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>In, from the bottom up: {value}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>A washer or seat left out lets the spacer wear into the spring, and changes the preload.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Closer coils of the spring {value}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Which end goes up decides how much spring hangs on the moving part and how much oil it displaces; both legs alike.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Spacer of {value} in, both alike</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Every millimetre of spacer is a millimetre of preload; its ends are cut square.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Preload adjuster at its lowest</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The cap then meets the least spring, its thread starts without being forced, and both legs begin alike.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Cap's O-ring and threads clean, oiled, sound</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The thread is fine and often aluminium: dirt in it feels like the start of a crossed thread, and hides one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Cap on the rod, locknut against it</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The cap hangs on the damper rod: how far it is screwed on sets the rebound adjuster's range.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Cap turned in slowly, square to its thread</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Press it down straight and turn it backwards until the thread drops in, then forwards: a fine thread crosses easily.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The spring pushes the cap: keep face and hand out of its line until several threads hold.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Cap felt to turn easily down to its seat</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Only a thread that turns by hand is straight. The cap is done up later, in Tighten, while the lower clamp holds the tube.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Sealing off the openings, fittings on</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>The openings are sealed only while the leg is off the machine with oil in it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>Races home, greased, all balls or rollers in</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/build/steps.json" />
      <source>A cup that is not home goes home later on the road, and the bearing is loose.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Brake lever pumped and held</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Pump until the lever is firm, then hold it hard: it must not sink. The wheel must stand while it is held, and turn when it is let go.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Brakes work before the first metre: the pads may have been pushed back, and the first pull then finds nothing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Brake pads and fluid looked at</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Pads seated, with lining left and clean; fluid between its marks; no fitting, hose or caliper wet; the caliper's bolts and the hose holders in place.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Steering free from lock to lock</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>With the front wheel off the ground, from stop to stop: it falls to each side by itself, without a notch and without play.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Hoses and cables free at full lock</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>At both stops, and with the fork at full reach: nothing is pulled, pinched or rubbed, and the throttle closes by itself.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Axle and wheel free</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Spin the wheel: it runs out freely and true, and nothing touches. Rock it across the axle: no play.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Fork works smoothly</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>On the ground, front brake held, press the fork down and let it up: no catching, no knock, no oil on the tubes afterwards.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Lamps and instruments work</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/final_checks.json" />
      <source>Head lamp and its aim, turn signals, horn, brake lamp by the front lever, instruments and their lamps, at both stops of the steering too.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>steel rule</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>limit of error: legal accuracy class I, 0.1 mm + 0.1 mm for each metre begun + 0.1 mm where it is used from its end (UK S.I. 2016/1153, schedule 1I); resolution and repeatability: common practice, no source</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>Stand it on the face it measures from, look square at the edge, and read to the half millimetre.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>vernier caliper</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>limit of error: DIN 862 for 0.05 mm steps up to 100 mm, seen second-hand; repeatability: common practice, no source</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>Wipe the jaws, close them and see that they read nought. Rock it gently and take the smallest reading across, the largest between.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>digital caliper</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>limit of error: DIN 862 for 0.01 mm steps up to 500 mm, the larger of its two figures, seen second-hand; repeatability: common practice, no source</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>Wipe the jaws, close them and set nought. Use the same light pressure every time, and take it off and put it on again between readings.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>depth gauge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>limit of error: DIN 862 for 0.05 mm steps, with the 0.02 mm it adds for depths, seen second-hand; repeatability: common practice, no source</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>Hold the foot flat on the bracket's upper face, let the rod down onto the tube's edge, and never onto the cap.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>feeler gauges</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>The gap is between the blade that goes in with a light drag and the next one that does not. Write down the one that goes in, and use as few blades together as will do.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>tape</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>limit of error: legal accuracy class II, 0.3 mm + 0.2 mm for each metre begun, up to two metres (UK S.I. 2016/1153, schedule 1I); resolution and repeatability: common practice, no source</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>Pull it straight, measure from the 100 mm mark and take 100 mm off: the hook moves and wears.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>dial indicator</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/gauges.json" />
      <source>Stand it square to the face on a firm base, with about one turn of the pointer on before it is set to nought.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Tube runout</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>fork tube</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A bent tube binds in its bushes, and no clamp brings it back into line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Turn the tube once round on V-blocks and read how far the pointer swings, lowest to highest, midway between the blocks and at two more places. The bend is half of what is indicated; an oval tube adds to it, so half is the most the bend can be.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>swing, one a place</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>bend is half the indicated: US Army TM 10-3930-653-14&amp;P, p. 79; the rest common practice, no source</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Tube surface</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A pit or a score that runs under the seal cuts it, and a new seal leaks within days.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Wipe the tube clean and draw a fingernail along it all the way round where the seal runs. Anything the nail catches on is damage; a mark above the seal's travel only needs watching.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Bush play</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>bushes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Worn bushes let the wheel shake under the brake, and the seal is worked from side to side until it leaks.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Hold the slider still and rock the tube fore and aft with a dial indicator on it just above the seal, reading the full swing. Do it at three heights, nearly out, half way and nearly in: the greatest swing counts.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>swing, one a height</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Spring free length</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>fork spring</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A spring that has settled is shorter, so the fork sits low and has less travel left.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Stand the spring upright on a flat bench without pressing it and measure from the bench to its top. Turn it a third round between readings; where it is in two pieces, measure the piece the limit is given for.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>length, standing free</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Oil seal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>oil seal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A leaking seal loses damping and wets the brake.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Look for an oily ring on the tube and for oil on the slider below the seal. Feel the lip: it is soft, whole and evenly sprung all round, and the garter spring sits in its groove.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Dust seal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>dust seal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A cracked dust seal lets grit and water down onto the oil seal.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Lift it clear and bend its lip outwards all the way round. Cracks, hardness or rust on the ring beneath mean a new one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Cap O-ring</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>cap O-ring</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>The cap's O-ring keeps oil and air in, and one that has taken a set no longer does.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Take it off and look at its section. It is round and springs back; flat, nicked or hard means a new one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Air-fitting O-rings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>air-fitting O-rings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>The fittings seal oil as well as air, so their O-rings are checked even where no pressure is used.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Take each fitting off and look at every O-ring and its groove. Flat, nicked or hard means a new one, and a groove with a burr cuts the next.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Fork cap threads</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>fork cap</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>The cap holds the spring down, and its fine thread strips without warning.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Brush the thread clean and look along it against the light. Torn, flattened or bright-worn crests mean a new cap.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Tube threads</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A pulled thread in the tube lets go of the cap under spring pressure.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Turn the cap in by hand without its spring: it goes slowly, square and freely to its seat. Binding, rocking or metal in the grease is damage.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Spring ends and coils</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A broken or rubbed coil sheds metal into the oil and changes the spring.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Wipe the spring and look at its ends and along its coils. Cracks, broken ends or worn flats mean a new one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Oil state</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>fork oil</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Oil tells what went on inside: water makes it milky, wear makes it glitter.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Pour the old oil into a clean pan and look at it against the light. Milky means water past the dust seal; metal means a bush, a rod or a spring is wearing: find which.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Damper rod and its ring</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>piston ring</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A worn ring lets oil past it, and the leg damps less than the other.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Draw the rod out and look at the ring and at the bore it runs in. The ring is whole, free in its groove and not worn flat; the rod is straight and unscored.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Anti-dive unit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>anti-dive unit</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A unit that sticks locks its leg, so the two legs no longer work alike under the brake.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Take the unit off, work its plunger by hand and look for weeping at its seals. It moves freely and comes back by itself, and its passages are clear.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Cartridge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>cartridge</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A cartridge that leaks inside damps one way only, and its leg works against the other.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Pump the rod slowly in oil, upright, until no air comes. It drags evenly both ways with no jump, and the rod is straight and unscored.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Upper bearing races</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>head bearing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Races with dents make the steering catch straight ahead, and the bike weaves.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Clean both races and draw a ball or a fingernail slowly round the track. Marks you only see are not dents: a dent is felt as a notch, and means new races and balls or rollers together.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Lower bearing races</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>The lower race takes the blows from the road and the brake, so it goes first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Clean both races and draw a ball or a fingernail slowly round the track, most carefully straight ahead. Marks you only see are not dents: a dent is felt as a notch, and means new races and balls or rollers together.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Balls or rollers and cage</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>One pitted ball or roller marks the whole race.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Wash them, count them and roll each under a finger on glass. All are there, bright and of one size; the cage is not cracked, and lets none fall out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Grease seals</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>grease seal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A grease seal that is torn lets water into the lower bearing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Look at the lip and the ring all round. It is soft and whole, and the grease under it is clean and not grey with water.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Spring washers</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>spring washers</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A spring washer gone flat holds nothing, and its bolt works loose.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Lay each on a flat plate. Its ends stand apart in height; one that lies flat, or is cracked, is replaced.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Axle straightness</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>axle</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A bent axle cocks the legs and the wheel, and no alignment puts it right.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Turn the axle once round on V-blocks and read how far the pointer swings at its middle. The bend is half of what is indicated.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>swing, one a turn</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Top bracket</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>top bracket</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A cracked or bent bracket cannot hold the legs in line, however it is done up.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Clean it and look round each clamp slit and bolt boss for cracks. Lay its face on a flat plate: it does not rock, and the clamp bores are round.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Lower bracket and stem</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>lower bracket</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>A cracked or bent lower bracket or stem cannot hold the legs in line, however it is done up.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/inspection/points.json" />
      <source>Clean it and look round each clamp slit, bolt boss and the foot of the stem for cracks. Stand two straight bars in the clamps and look along them: they lie in one plane, square to the stem.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>seated</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>{joint}: seat the bearing, then swing lock to lock</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The races and balls are pressed home first, because a bearing that settles later leaves the steering slack.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>backed off</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>{joint}: back off {turn}</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The seating load is taken off again, because left on it dents the races and makes the steering heavy.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>set</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>{joint}: set the bearing</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The bearing is set with nothing hung on the stem, because its drag can be felt only while the brackets swing free.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>No play and no notch: a bearing set too tight wanders as badly as a slack one.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Top bracket on, its bolts in by hand, its clamps slack</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The tubes go up through both brackets, so the top one is on, and free to find its place, before the legs.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Handlebars ready to go on with the legs, clamps slack</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Handlebars between or below the brackets can only be threaded on while the tubes go up through them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Legs in to their height, lower clamps nipped up</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The lower clamps are nipped up just enough to carry the legs, so that each can still be pushed to its height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Machine supported so that it cannot tip with the front end out; a nipped clamp can let a leg slip.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Measure both heights: protrusion equal</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The heights are measured while a leg can still be moved by hand; after the clamps it costs the whole job again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Measure both sides: lower bracket square to the frame</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The bracket is squared once the legs stand at their height and before it is clamped, because clamped askew it stays askew.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Check that the legs are in line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>A twist between the brackets can be turned out only while the stem and the top clamps are slack.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Swing lock to lock: steering free, no play</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The stem head presses on the bearing too, so its drag is felt again before the clamps make a correction dear.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Preload adjusters, where fitted, at their lowest</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Wound down to the lowest preload, the spring presses least while the cap's thread is started.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Write the setting down first; it goes back when the caps are tight.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Measure both heights again</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Tightening can draw a tube up or down in its clamp, and this is the last moment before the tops are covered.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Preload adjusters, where fitted, back to their setting, both alike</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The caps are tight, so the springs may press again, and the adjusters can still be reached.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Seals out, air line joined to both legs, where one joins them</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The line is joined when both legs stand at their proved height, because a leg that is still moved pulls at it and cuts its O-rings.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Every O-ring looked at, even where no pressure is used; no air in yet.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Fork brace in place, its bolts finger-tight</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The brace goes on while the wheel is out of the way, and stays slack until the sliders have found their place along the axle.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Brake lines joined to the anti-dive units, with new sealing rings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The lines are joined when the legs stand where they stay, so that each lies without a twist, and before the brake is filled.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The caps on the lines come off last, one line at a time. The torque of the union is in the brake chapter of the manual; a used ring weeps.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Wheel in, axle hand-tight</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The wheel goes in with the axle by hand only, because an axle that will not go in by hand shows that something is out of line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Machine supported; speedometer drive, spacers and the wheel's direction of turning looked at before the axle goes through.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Fill and bleed the brake, anti-dive units too, until no bubble comes</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The lines to the units stood open and hold air, and a lever that squeezes air holds no wheel.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Fresh fluid from a sealed can, of the kind the manual names. It takes paint and harms the eyes: rinse with water at once.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Pump the brake lever until it is firm</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The pads stand back from the disc after refitting: the first pulls bring them up, and only then can the brake hold the wheel.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The first pull finds no brake. Look at the fluid level; a lever that stays soft means air, and nobody rides until it is bled.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Pump the fork three times, wheel held by the brake</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Pumping lets the sliders find their own place along the axle before they are pinched on it, so the fork does not bind.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Wheel on the ground, machine upright and held by a second person or against a wall.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Lock to lock: hoses and cables run free</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Looked at now that every hose and cable has both ends fixed and shows its real run.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>A hose that pulls at full lock can turn the steering or tear: no riding until it is put right.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Air back in, to the pressure the manual gives, both legs alike</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The air goes in last, when every joint that holds it is tight and the fork has settled on its axle without it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Front wheel clear of the ground. A hand pump only: a leg holds so little that a workshop line bursts its seals at once. Never above the limit in the manual.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Machine supported upright, its front wheel still on the ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The support comes before the first bolt, because the tight ones take a long bar, and a machine that rocks falls.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>It must stand when pushed, now and with the front end off: under the engine or the frame, never by the exhaust.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Let the air out of both legs at the valve</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The air goes before anything of the legs is loosened, because a leg under air throws its cap or its fitting and the oil after it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Read the pressure first, as the manual measures it, and write it down. Open the valve slowly, a rag over it and the face away; the front end sinks a little.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>cracked</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Crack {joint}, wheel still on the ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>It is cracked, half a turn and no more, while the wheel stands on the ground, because once that is lifted the axle turns along and the machine rocks on its support.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Front wheel lifted clear of the ground</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>It is lifted now that the axle, which takes a long bar, is cracked, because the wheel has to hang clear to come out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Push the machine again: it must stand now, and with wheel and legs off.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>A slip of wood between the pads of each hung caliper</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>With no disc between the pads, one pull at the lever closes them or pushes a piston out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Nobody touches the lever until the calipers are back over their discs.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Axle out, wheel out; spacers laid down in their order</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The wheel comes out before the legs are slackened, because it ties them together and its weight hangs on them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Crack {joint}, a quarter turn</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>It is cracked while cap and spring still press on the damper rod, because without them the rod turns with its bolt.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>A quarter turn and no more, a tray under it: the oil is still in, and is drained later on the bench.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Handlebars aside, tied up level</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>They go aside before the top clamps, because they cover the caps and would be in the way of the gauge.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The fluid reservoir stays upright, and no hose or cable carries the bars.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Measure and write down both heights as found</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Measured before a clamp is touched, because it is the only way back to where the legs stood.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Measure and write down both sides of the lower bracket as found</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Measured while everything still holds, because it shows whether the front end stood square before the work.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>It is cracked while the legs still hold both brackets, because with the legs out the top bracket turns with it and takes cables and wires along.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Preload adjusters, where fitted, noted and wound to their lowest</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The spring is let off as far as it goes before the cap is cracked, so that it throws less when the thread ends.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Air line parted, where one joins the legs; every opening sealed</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The line ties the legs together, so it is parted before either can drop and tear it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The air is out first. Unsealed, an opening lets oil out when the leg is laid down, and dirt in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Brake lines parted at the anti-dive units, every end capped at once</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The units come out with their legs and the lines stay on the machine, so they are parted while the legs still stand firm.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Brake fluid takes paint and harms the eyes: rags round the union, rinse with water at once. An open end takes in dirt and damp; the lever stays untouched.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Handlebars tied up level, so that the tubes can slide out of them</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>These handlebars lose their hold as the tubes are drawn, so they are tied up before the first lower clamp lets its leg go and both hands are wanted.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Legs stood upright, caps up, marked left and right</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Upright the oil stays in them, with the caps cracked; marked, each goes back as the leg it was.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Top bracket up and off the stem</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The top bracket sits over the stem nut, and comes up once nothing holds it to the stem and no tube stands in it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Cables and the wires of the ignition switch run through or under it: none is pulled.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>Each leg on the bench: cap off, spring out, oil drained</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The legs are emptied before anything below is undone; each by itself, because how much comes out, and what it looks like, tells of that leg.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/activities.json" />
      <source>The spring throws the cap as its thread ends: press it down, face out of line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>anti-dive unit bolt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>bolt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Undo</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Holds the anti-dive unit to the slider.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Done on the bench: the unit and its bolts must be tight before the leg goes in and before the brake is filled and bled through it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Undone with the leg out and drained, because fork oil and what brake fluid is left run out as the unit comes away.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Brake fluid runs through or beside this unit: new sealing rings, and nothing that fluid has wetted goes dry to the bench.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Brake fluid takes paint and harms the eyes: a tray under the unit, and what it wets is rinsed with water at once.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>damping unit bolt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Holds a damping unit or cartridge in or on the leg.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Done on the bench: the unit must be tight before the oil goes in, and the leg can be held properly only while it is out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Undone with the leg out and drained, so that no oil stands over it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>damper-rod bolt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Comes up through the bottom of the slider into the damper rod.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Done on the bench before the leg goes in, with the wheel out: its head sits under the slider, where the axle and the floor are in the way later.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Already cracked, it is taken out with the leg drained: the last of the oil comes out past it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The damper rod turns with the bolt unless it is held; a bolt that spins is not tight, whatever the wrench says.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>air manifold fitting</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Fitting of an air-assisted fork that sits in a leg and takes the air line or the valve.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Done on the bench, where its O-ring can be seen to go home uncut before the brackets hide it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Undone on the bench, where the O-ring and its groove can be looked at and the tube's opening sealed again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>A new O-ring, oiled: a cut one loses the air overnight, and is seen only with the fork apart again.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Only with the air let out at the valve: a leg under air throws the fitting.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>spacer fitting</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Threaded fitting of a spacer or preload piece in the leg.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Done on the bench: it sits under the cap and cannot be reached once the leg is closed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Undone on the bench, once the cap is off and the spring no longer presses.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>stem nut</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The slotted nut that sets the head bearing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The head bearing is set first, with nothing hung on the stem, because its drag can be felt only while the brackets swing free.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The stem nut comes last: while it holds, the lower bracket cannot drop and the bearing stays together.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Hold the lower bracket up: it drops, and loose balls run out, as the nut leaves its thread.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>stem head bolt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Bolt or nut at the very top, draws the top bracket down on the stem.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The stem head draws the top bracket down to its seat, so it comes before anything that grips the tubes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Already cracked, the stem head comes off once nothing but the stem nut is needed to hold the lower bracket.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>stem pinch bolt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Closes the top bracket round the stem.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The stem pinch follows the stem head: pinched earlier, the bracket would hang on the stem instead of sitting down.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The stem pinch is slackened before the stem head is cracked, which then turns against its own thread only.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>lower clamp</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>draw its leg out</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Clamp of the lower bracket round a fork tube, one to three bolts.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The lower clamps go to torque before the caps, because they are what holds the tubes while a cap is turned.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The lower clamps are slackened last of the clamps, because they carry the legs.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The leg drops when this clamp lets go: a hand under it from the last turn on; twist and pull, no hammer.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Crack</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Closes the top of a fork tube; the spring presses on it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The cap goes to torque while the tube is held in the bracket, before the tops are covered.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The cap is cracked, a quarter turn and no more, while the tube is still held in the machine.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The spring presses on the cap: start it by hand with the face out of line, and never drive a crossed thread.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Spring and, on some forks, air press behind this cap: the air is out first, it is cracked only, and it comes off on the bench with the face out of line.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>top clamp</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Clamp of the top bracket round a fork tube, one or two bolts.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The top clamps come last of all the clamps, so that the tubes settle in the lower ones and nothing pulls the brackets against each other.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The top clamps are slackened first of the clamps, so that they squeeze neither the cap's thread nor the tube.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>handlebar clamp below the brackets</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Handlebar clamped to the tube under the lower bracket; it goes on with the leg.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>It is already on the tube and waits until the tube's height is proved, because torqued earlier it would hide a tube that has moved.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Slackened before the clamps of the brackets, because the tube has to slide out through it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>handlebar clamp between the brackets</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Handlebar clamped to the tube between the brackets; it goes on with the leg.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>handlebar clamp</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Handlebar clamp on or above the top bracket.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The handlebars wait until the heights have been proved, because they cover the tops of the tubes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The handlebars come aside before the clamps of the brackets, because they cover the caps and the top clamps.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>instrument bracket</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Carries the instruments, on the top bracket as a rule.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The instruments follow once the top bracket is finished, because they stand over it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The instruments come off early, because they stand over the top bracket.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>lamp bracket</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Carries the headlamp, on the tubes or the brackets.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The lamp bracket follows once the tubes are clamped, because it takes its place from them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The lamp comes off early, because it stands before the brackets and its wires are easily pulled.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>mudguard</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Bolted to the sliders.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The mudguard goes on before the wheel, which would be in its way.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The mudguard comes off once the wheel is out of its way.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Plain axle, screwed into one leg.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The axle draws wheel, spacers and one slider together, and everything that grips it waits for that.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Already cracked, the axle turns out when nothing grips it any more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>axle held in clamp caps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Axle lying in split slider ends, closed by caps.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The axle draws wheel and spacers together while the caps are still loose round it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Already cracked, the axle is undone when its caps are slack.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>axle nut</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Nut on the end of the axle.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The axle nut draws wheel and spacers together before a slider is pinched on the axle.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Already cracked, the axle nut turns off when nothing pinches the axle any more.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>brake caliper</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>hang it from a hook</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Bolts the caliper to the slider.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The caliper goes on over the disc once the wheel is in, and before the fork is pumped with the brake held.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The calipers come off before the axle is drawn, because the wheel cannot pass them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Pump the lever until it is firm before the machine is moved at all: the first pull after refitting finds no brake.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The hose never carries the caliper, not even while the bolts of the other are undone: it is damaged where it cannot be seen. Nobody touches the lever while a caliper is off its disc.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>axle clamp cap</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>nut</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Cap under the slider that closes round the axle.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The caps close once the sliders have found their own place on the axle.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The caps are slackened before the axle is touched, because they grip it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Where the cap is marked for the front, the gap belongs where the manual puts it: an even gap on a cap made for an uneven one breaks the stud.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>axle pinch bolt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Closes the slider's end round the axle.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The pinch bolt closes once the slider has found its own place on the axle.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The pinch bolt is slackened before the axle is touched, because it grips it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>fork brace</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Ties the two sliders together over the wheel.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The brace ties the sliders together, so it goes to torque once they have found their own place along the axle and are held there.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The brace is undone early, because it ties the sliders together, which have to part as the axle is drawn.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>hose guide</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Free</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>Holds a brake hose or a cable to the fork.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The guides come last, because the hoses find their run only when both their ends are fixed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/joint_kinds.json" />
      <source>The guides are freed first, so that the hoses can follow their calipers.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/passes.json" />
      <source>Brought up in shares so that the clamp closes evenly round the tube and no bolt does the work of its neighbour.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/passes.json" />
      <source>To full torque now that all the bolts of this clamp carry their share.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/passes.json" />
      <source>Once more round, because each bolt slackens its neighbour in the same gap; it is done when none of them moves.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top clamp comes after the cap: tight, it squeezes the tube on to the cap's thread, and the torque is spent in the thread instead of on the seat.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The cap is cracked with the top clamp already slack, because a squeezed thread galls; the lower clamp still holds the tube.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lower clamp holds the tube so that it cannot turn with the cap, and the top clamp is still slack so that the thread turns freely.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lower clamp lets go only after the cap has been cracked, because nothing else keeps the tube from turning with it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Only a bearing that has been seated can be backed off.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The setting starts from no load, so the seating load is backed off first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>What is done on the bench must be done before the leg goes in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top bracket covers the stem nut, which is set first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The tubes go up through the top bracket.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The tubes go up through these handlebars.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>There is a height to measure only once the legs are in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The axle goes to torque once it has gone in by hand, which shows that the sliders stand true to the wheel.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Pumping the fork has let this slider find its own place on the axle; pinched before, it would bind on its tube.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The sliders settle along an axle that is already tight.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>What grips the axle comes after it, because an axle cannot draw up inside a closed clamp.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Already cracked, it turns easily now that nothing grips the axle; turned in a closed clamp, an axle tears the bore it lies in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The legs are measured and hold their height; the caps can only be torqued once the lower clamps grip the tubes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The bracket is square; clamped now, it stays so.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>There must be a tube in the clamp before it closes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The legs are in line; the stem head now holds the top bracket where it was turned to.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lower clamps follow the stem head, which would otherwise draw the brackets together against tubes that cannot give.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Already cracked, the stem head comes off when the legs are out: until then it keeps the top bracket where it is.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top clamps follow the stem head, because a gripped tube keeps the top bracket from sitting down on the stem.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Already cracked, the stem head comes off with the top clamps open, so that the bracket can come up off the tubes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem is pinched once the stem head has drawn the top bracket down; pinched first, the bracket hangs on the stem.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Already cracked, the stem head comes off with the stem pinch slack, so that the bracket can follow it up.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lower clamps follow the stem, so that the brackets have found their place on it before they are tied together by the tubes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top clamps follow the stem pinch, so that the bracket sits square on the stem before it grips the tubes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top clamps come last, so that the tubes stand where the lower clamps hold them and the brackets are not drawn against each other.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lower clamp is slackened after the top one, because it carries the leg.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Tightening the top clamps can move a tube.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The heights are proved before the last clamps close.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The legs are in line; the pinch keeps the top bracket so.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The legs are in line; the top clamps keep them so.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The bracket is square and the legs stand at their height, so the stem head draws the top bracket down where it will stay.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Moving a leg turns the bracket, so the heights come first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top bracket is lined up with the lower one, so the lower one must stand right first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem head locks what the stem nut has set, so the bearing is set first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem nut comes when the top bracket is off it: it is all that holds the lower bracket up and the bearing together.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The bearing's drag is felt with nothing hung on the stem.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>There must be a setting to check.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem head presses on the bearing and can change its drag.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The pinch is the last that can change the bearing's drag.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The steering has been felt to be free before the clamps make a correction dear.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The spring presses least on a cap whose adjuster is at its lowest.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The springs press again only once the caps hold them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The handlebars follow now that the heights are proved, because they cover or grip the tops of the tubes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The handlebars follow the top clamps, which they would cover.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top clamps are first of the clamps to be slackened, once the handlebars neither cover them nor grip the tubes, so that they squeeze neither cap nor tube.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top clamps are slackened once the instruments no longer stand over them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lamp follows once the tubes are clamped, because its bracket takes its place from them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top clamps are slackened once the lamp's bracket no longer holds to the tubes.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The sliders have found their own place along the axle; tied together before that, they could not.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The brace ties the sliders together, so it comes when the legs stand at their proved height.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The top clamps are slackened with the brace already off, because it ties the legs together.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The legs stand at their proved height before anything joins them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The brace is put in place while the wheel is out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The sliders are held on the axle where they settled, so the brace has nothing to pull them to.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The mudguard is reached while the wheel is out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The legs are clamped before they carry a wheel.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The caliper goes on over the disc once the axle holds the wheel, and before the fork is pumped, because the brake has to hold the wheel for that.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>There is a lever to pump once the calipers are on.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The brake holds the wheel only once its lever is firm.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The brake holds the wheel while the fork is pumped.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Anti-dive units and their bolts are tight before the brake is closed and bled through them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The guide follows the caliper, because a hose finds its run only when its end is fixed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The caliper follows its hose guide, so that the hose can go with it and is not pulled.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The run of a hose shows when both ends are fixed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The run of a cable shows when the handlebars are fixed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The wood goes in when the calipers hang.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Already cracked, it turns off now that the calipers hang from their hooks and no longer hold the disc.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The wheel comes out when the axle is undone.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The wheel comes out when nothing grips the axle.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The wheel ties the legs together.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The brace ties the legs together.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The mudguard ties the legs together.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The handlebars can be moved when their clamps are slack.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The handlebars cover the top clamps.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The heights are written down before a clamp is touched, because there is no other way back.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The bracket is measured while everything still holds.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The spring is let off before the cap is cracked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The legs stand on the bench when they are drawn out of their clamps.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>A cap that is still tight cannot be undone once the leg is out of the machine, for want of something to hold the tube.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The tubes slide in these handlebars when their clamps are slack.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The tubes are drawn out of handlebars that are tied up.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem head holds the top bracket down.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The pinch holds the top bracket to the stem.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The tubes stand through the top bracket until the legs are out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem nut is reached once the top bracket is off it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem nut comes when the legs are out, because their weight would hang on the bearing's last thread.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Nothing grips the axle when it is first turned.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Cracked on the ground, it is undone once the wheel can come out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>What takes force is done with the wheel on the ground.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>A long bar is pulled only on a machine that stands firm.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Already cracked, it is undone once the wheel hangs clear and carries nothing.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The wheel comes out when nothing stands on it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The air is out, so the legs may be touched; what grips the axle lets go before the axle is turned.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Already cracked, it is undone with the air out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Nothing of the legs is touched under air.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The air is out, so the legs may be touched; the brace ties the sliders together, which have to part as the axle is drawn.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Oil under air would be thrown out past the bolt.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>An adjuster is turned only when nothing but the spring presses on it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The clamps are slackened on legs without air.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The cap is cracked only when no air presses behind it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>A line under air whips as it is parted.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The bolt is reached once wheel and axle are out of its way.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The more the spring presses, the better it holds the rod.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The cap is cracked when the damper-rod bolt is, because the spring under it held the rod for that.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The leg is held while its bolt is cracked.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem pinch is slackened once the readings as found are written down, and before the stem head is cracked, which then turns against its own thread only.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The stem pinch is slackened once the bracket has been measured as found.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The heights are written down before the stem head is touched.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The bracket is measured before the stem head is touched.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The handlebars are out of the way of the bar.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Only its own thread resists once the stem pinch is slack.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The clamps let go when the stem head is cracked, because the legs held both brackets for that.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Cracked while the legs held the brackets, it comes off when they are out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The caps are cracked while everything still stands.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The line is parted before a leg can drop.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The line ties the legs together.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The brake lines are parted before a leg can drop.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The brake lines stay on the machine.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The calipers hang quietly before a line is opened.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The handlebars are tied up before a leg can drop out of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The legs are drained on the bench.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Undone with the leg drained, when no oil runs out of the opening and the O-ring's groove can be looked at.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Undone once the cap is off and the spring no longer presses.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The line joins legs that are in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The line is joined to legs that stay where they are.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Air is let in behind caps that are tight.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Air is let in when the line is joined.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The fork settles on its axle without air.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>Every joint of the legs is tight before air goes in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lines join legs that are in.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lines are joined to legs that stay where they are.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>A brake is filled when it is closed.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The brake is bled with the calipers over their discs.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/order/rules.json" />
      <source>The lever grows firm only on a brake without air in it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>Axle</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>plain</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>screwed in</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>The axle screws into one leg.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>pinched</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>screwed in, pinched</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>The axle screws into one leg; the other closes round it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>On the side away from the axle's thread: look which it is.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>clamp_caps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>in clamp caps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>Split slider ends, closed by caps from below.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>{side} axle clamp cap</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>A cap that is marked with an arrow goes on that way round; the manual says which nut is done up first.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>nut_and_pinch</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>nut and pinch</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>A nut at one end; the other leg closes round the axle.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/axle.json" />
      <source>On the side away from the nut: look which it is.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>Front brake</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>both</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>two calipers</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>{side} brake caliper</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>left</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>caliper left</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>left brake caliper</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>right</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>caliper right</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>right brake caliper</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>none</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>none on the legs</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/brake.json" />
      <source>A drum, or something not bolted to the legs.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/caps.json" />
      <source>all</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/caps.json" />
      <source>fork caps</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/caps.json" />
      <source>{side} fork cap</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/caps.json" />
      <source>Started by hand, square to its fine thread, and turned in slowly.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>Fork</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>damper_rod</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>damper rod</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>A plain fork: spring, oil and a damper rod held by a bolt from below.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>{side} damper-rod bolt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>A new sealing washer under its head; the rod held while it is turned.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>air_assisted</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>with air fittings</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>As the plain fork, with an air valve and a line that joins the legs.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>{side} air fitting</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>O-rings looked at even where no pressure is used; the tube's openings sealed while oil is in it off the bike.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>The openings for the air are closed before the leg is filled and shut, because the oil would run out of them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>anti_dive</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>with anti-dive units</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>As the plain fork, with a unit on each slider that the front brake works.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>{side} anti-dive unit bolts</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>Count the bolts; new sealing rings. Brake fluid and fork oil meet here: nothing wetted goes dry to the bench.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>The anti-dive units are tight on their sliders before the leg is filled and shut, because the fork's oil goes through them.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>A closed damping unit in each leg; its rod is screwed to the cap.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>{side} cartridge bolt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>A new sealing washer; the cartridge held while it is turned.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>The cartridge is held fast below before its rod and the cap close the leg, because it turns with the bolt while it is loose.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>upside_down</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>upside-down</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/fork.json" />
      <source>The thick tubes stand in the brackets, the thin ones carry the axle.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/handlebars.json" />
      <source>Handlebars</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/handlebars.json" />
      <source>above</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/handlebars.json" />
      <source>above the top bracket</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/handlebars.json" />
      <source>{side} handlebar clamp</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/handlebars.json" />
      <source>between</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/handlebars.json" />
      <source>between the brackets</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/handlebars.json" />
      <source>below</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/handlebars.json" />
      <source>below the brackets</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/lower_clamps.json" />
      <source>Each lower clamp</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/lower_clamps.json" />
      <source>one</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/lower_clamps.json" />
      <source>one bolt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/lower_clamps.json" />
      <source>{side} lower clamp</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/lower_clamps.json" />
      <source>two</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/lower_clamps.json" />
      <source>two bolts</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/lower_clamps.json" />
      <source>three</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/lower_clamps.json" />
      <source>three bolts</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/stem.json" />
      <source>Stem, at the top</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/stem.json" />
      <source>head bolt and pinch bolt</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/stem.json" />
      <source>head bolt alone</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/top_clamps.json" />
      <source>Each top clamp</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/patterns/top_clamps.json" />
      <source>{side} top clamp</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Fuel tank</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Tap shut and no flame near, because fuel runs from an open pipe; covered or set aside, because a dropped spanner marks it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Left front caliper</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Hung from a hook, not from the hose, because a hose that carries a caliper is damaged inside; wood between the pads, because one pull at the lever pushes the pistons out.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Right front caliper</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Speedometer drive</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Mark how it stands on the slider, because a drive fitted turned round breaks its tongue or its cable.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Front wheel</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Mark its way of turning and lay the spacers down in their order, because they go on either way and only one is right; never left lying on a disc.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Front mudguard</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note which washer and rubber went where, because a guard pulled together without its spacers binds the sliders.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Fork brace</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Mark front and top, because a brace that is turned round pulls the legs together.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Mark how they are turned in their clamps before they move; tied up level with the reservoir upright, because air gets into the brake and fluid strips paint.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Brake reservoir</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Kept upright and carried by a strap, not by its hose, because air rises into the line and the fluid strips paint.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Instruments</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Laid face up and not hung from their cables, because a cable that is bent sharply breaks inside.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Headlamp and bracket</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Tied up and not hung from its wires; mark how high the beam stood, because it is set again before the road.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Left indicator</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Mark the wires of each side, because left and right are easily changed over.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Right indicator</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Ignition switch</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Battery disconnected first, because its wires are live; its plug is parted and not pulled by the wires.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Horn</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Take its plugs and not its wires; note which way it points, because it may foul the lower bracket at full lock.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Clutch cable</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note or photograph its run before it moves, because a cable on the wrong side of the stem pulls at full lock; note the adjuster's turns.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Throttle cables</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note or photograph their run and mark which one opens, because a cable that pulls at full lock opens the throttle.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Speedometer cable</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note or photograph its run, and keep its ends clean, because grit wears the drive.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Brake hoses, guides</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note or photograph their run and every guide, because a hose that is free of its guide reaches the tyre; none is bent sharply or clamped.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Wiring and its ties</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note where each tie stood, because a loom without one is trapped between bracket and stop at full lock.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Steering damper</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note its position and its setting before it moves, because mounted askew it stops the steering short of the lock.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Fairing or screen</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note the length and place of each bolt, because too long a one reaches a hose or a wire behind it.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Left fork gaiter</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Note which way round its breather holes are, because turned forward they take in water.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Right fork gaiter</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Air line of the legs</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Pressure let out at the valve first; openings sealed, because the leg's oil runs out through them, and O-rings kept for their size.</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Anti-dive line</source>
      <translation type="unfinished" />
    </message>
    <message>
      <location filename="resources/strip/clutter.json" />
      <source>Capped at both ends at once, because brake fluid draws water and strips paint; the brake is bled again before the road.</source>
      <translation type="unfinished" />
    </message>
  </context>
</TS>
