package wirelist_test

import (
	"strings"
	"testing"

	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// What of a wire could be otherwise than it is read is said with its rows; the same list without it is read without a word of it.
func TestLookFor(t *testing.T) {
	for called, c := range map[string]struct{ list, plain, says string }{
		"a size in the name of an end": {"Wire,From,To,Colour,AWG\n1,Hub:1,Fan:1,red,20\n2,Hub:2,18 AWG lamp,blue,20\n",
			"Wire,From,To,Colour,AWG\n1,Hub:1,Fan:1,red,20\n2,Hub:2,lamp,blue,20\n",
			"a connector whose name reads as none: 18 AWG lamp: row 3;"},
		"a name that is an end": {"Vat plug\nPin,Signal,AWG\n1,from the heater,20\n2,Feed,20\n",
			"Vat plug\nPin,Signal,AWG\n1,heater,20\n2,Feed,20\n",
			"a name that reads as an end: row 3;"},
		"a letter that looks like a digit": {"Connector,Pin,Signal,AWG\nJ1,1,A,20\nJ1,2,B,20\nJI,3,C,20\nJ2,1,D,20\n",
			"Connector,Pin,Signal,AWG\nJ1,1,A,20\nJ1,2,B,20\nJ3,3,C,20\nJ2,1,D,20\n",
			"a connector called nearly as another: JI beside J1: row 4;"},
		"a letter left out": {"From,To,Signal,AWG\nHub:1,Agitator:1,A,20\nHub:2,Agitator:2,B,20\nHub:3,Agitaor:3,C,20\n",
			"From,To,Signal,AWG\nHub:1,Agitator:1,A,20\nHub:2,Agitator:2,B,20\nHub:3,Stirrer:3,C,20\n",
			"a connector called nearly as another: Agitaor beside Agitator: row 4;"},
		"a size in the remark": {"From,To,Signal,AWG,Remark\nHub:1,Vat:1,A,20,\nHub:2,Vat:2,B,20,18 AWG\n",
			"From,To,Signal,AWG,Remark\nHub:1,Vat:1,A,20,\nHub:2,Vat:2,B,20,20 AWG\n", "a remark that is a size: row 3;"},
		"a colour in the remark": {"From,To,Signal,Colour,Remark\nHub:1,Vat:1,A,red,\nHub:2,Vat:2,B,blue,green\n",
			"From,To,Signal,Colour,Remark\nHub:1,Vat:1,A,red,\nHub:2,Vat:2,B,blue,check it\n", "a remark that is a colour: row 3;"},
		"an end in the remark": {"From,To,Signal,AWG,Remark\nHub:1,Vat:1,A,20,\nHub:2,,B,20,to pump 2\n",
			"From,To,Signal,AWG,Remark\nHub:1,Vat:1,A,20,\nHub:2,Vat:2,B,20,to be checked\n", "a remark that reads as an end: row 3;"},
		"one end, and another one of its name": {
			"Hub,,\nPin,Signal,AWG\n1,Fuel pump,14\n2,CAN H,22\n\nFuse box,,\nPin,To,AWG\nF1,Fuel pump,14\nF2,Horn,14\n",
			"Hub,,\nPin,Signal,AWG\n1,Wiper,14\n2,CAN H,22\n\nFuse box,,\nPin,To,AWG\nF1,Fuel pump,14\nF2,Horn,14\n",
			"a wire with one end that is called as another end is: row 3;"},
		"a reference in the place of an end": {"Pin,Signal,To\n1,A,Vat:1\n2,B,same as 1\n", "Pin,Signal,To\n1,A,Vat:1\n2,B,Vat:2\n",
			"a connector whose name reads as none: same as 1: row 3;"},
		"two places in the name of an end": {"From,To,Colour\nHub:1,Vat:1,red\nHub:2,valve 8 to both lamps,blue\n",
			"From,To,Colour\nHub:1,Vat:1,red\nHub:2,both lamps,blue\n",
			"a connector whose name reads as none: valve 8 to both lamps: row 3;"},
		"a connector cut short": {"From,To,Signal\nHub J1-1,Vat:1,A\nHub J1-2 / J1-3,Vat:2,B\n",
			"From,To,Signal\nHub J1-1,Vat:1,A\nHub J1-2,Vat:2,B\n",
			"a connector called nearly as another: J1 beside Hub J1: row 3;"},
		"two lamps in one cell": {"From,To,Signal\nX1:1,S4:1,A\nX1:2,E1/E2,B\n", "From,To,Signal\nX1:1,S4:1,A\nX1:2,E1/2,B\n",
			"a cavity called as its connector is: row 3;"},
		"two lamps with a plus": {"From,To,Signal\nX1:1,S4:1,A\nX1:2,E3+E4,B\n", "From,To,Signal\nX1:1,S4:1,A\nX1:2,E3,B\n",
			"an end that could be several: row 3;"},
		"a choice of colours": {"Pin,Signal,Colour\n1,A,Red\n2,B,White or grey\n", "Pin,Signal,Colour\n1,A,Red\n2,B,White/grey\n",
			"a choice of two: row 3;"},
		"a choice of sizes": {"Pin,Signal,Size\n1,A,1.5\n2,B,2.5 / 4.0\n",
			"Pin,Signal,Size\n1,A,1.5\n2,B,2.5\n", "a choice of two: row 3;"},
		"a reference made an end": {"Pin,Signal,To\n1,A,Vat:1\n2,B,see pin 1\n", "Pin,Signal,To\n1,A,Vat:1\n2,B,seal pin 1\n",
			"a connector whose name reads as none: see: row 3;"},
		"a question mark behind a cavity": {"From,To,Signal\nHub:1,Vat:1,A\nHub:2,Vat:2?,B\n",
			"From,To,Signal\nHub:1,Vat:1,A\nHub:2,Vat:2,B\n",
			"a connector whose name reads as none: Vat: row 3;"},
		"both lamps": {"From,To,Signal\nHub:1,Vat:1,A\nHub:2,both lamps,B\n", "From,To,Signal\nHub:1,Vat:1,A\nHub:2,lamp,B\n",
			"an end that could be several: row 3;"},
		"two lamps of one word": {"From,To,Signal\nHub:1,Vat:1,A\nHub:2,Lamp L / Lamp R,B\n",
			"From,To,Signal\nHub:1,Vat:1,A\nHub:2,Lamp L,B\n",
			"an end that could be several: row 3;"},
		"a core's colour behind its cable": {"From,To,Cable\nHub:1,Vat:1,LiYY 2x0.5 wh\nHub:2,Vat:2,LiYY 2x0.5 bn\n",
			"From,To,Cable\nHub:1,Vat:1,LiYY 2x0.5\nHub:2,Vat:2,LiYY 2x0.5\n", "a cable whose text ends with a colour: row 2, row 3;"},
		"connectors and how many pins they have": {
			"Connector,Type,Pins,Mates with\nX1,DT 4,4,X11\nX2,DT 6,6,X12\n\nFrom,To,Size\nX1-1,X2-1,20\n",
			"Connector,Type,Pin,Mates with\nX1,DT 4,4,X11\nX1,DT 4,3,X12\n\nFrom,To,Size\nX1-1,X2-1,20\n",
			"a table that could count the cavities of connectors: row 2, row 3;"},
		"splices that are not read": {
			"Splice,Wire,Color,AWG,Goes to\nSP1,301,red,14,Lamp pin 1\nSP1,302,red,14,Horn pin 1\nSP2,303,blue,14,Fan pin 1\n" +
				",304,blue,14,Fan pin 2\n",
			"Stage,Wire,Color,AWG,Goes to\nlate,301,red,14,Lamp pin 1\nlate,302,red,14,Horn pin 1\nearly,303,blue,14,Fan pin 1\n",
			"a column that could say an end is not read: Splice: row 2, row 3, row 4"},
		"a cavity of two words": {"From,Pin,To,Pin\nHub,1,Vat,1\nHub 2,OIL LAMP,Vat,2\nHub,3,Vat,3\n",
			"From,Pin,To,Pin\nHub,1,Vat,1\nHub,2,Vat,2\nHub,3,Vat,3\n",
			"a cavity that reads as none: Hub-2:OIL LAMP: row 3;"},
		"two wires in one cavity": {"Wire,From,To,AWG\n1,Hub:1,Vat:1,20\n2,Hub:2,Vat:2,20\n3,Hub:1,Fan:3,20\n",
			"Wire,From,To,AWG\n1,Hub:1,Vat:1,20\n2,Hub:2,Vat:2,20\n3,Hub:3,Fan:3,20\n",
			"two wires in one cavity: Hub:1 wires 1 and 3: row 2, row 4;"},
	} {
		for list, says := range map[string]bool{c.list: true, c.plain: false} {
			tables, err := table.Read("list.csv", []byte(list), table.Limits{})
			if err != nil {
				t.Fatal(err)
			}
			_, rep, err := wirelist.Import(tables, draft.Options{})
			if err != nil {
				t.Fatalf("%s: %v", called, err)
			}
			full := strings.Join(rep.Full(), "\n")
			rule, _, _ := strings.Cut(c.says, ":")
			if says && !strings.Contains(full, "warn: "+c.says) || !says && strings.Contains(full, rule) {
				t.Errorf("%s:\n%s\n%s", called, list, full)
			}
		}
	}
}

// Two devices of a kind whose cavities have the same names are joined with a word about it: each could have wires of its own.
func TestLookForDevicesOfAKind(t *testing.T) {
	const list = "## Lift motor (DB9)\n\n- Pin 1 - coil A (red)\n- Pin 2 - coil B (blue)\n- Pin 3 - home (white)\n\n" +
		"## Tilt motor (DB9)\n\n- Pin 2 - coil A (red)\n- Pin 1 - coil B (blue)\n"
	tables, err := table.Read("list.md", []byte(list), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	_, rep, err := wirelist.Import(tables, draft.Options{})
	full := strings.Join(rep.Full(), "\n")
	if err != nil || !strings.Contains(full, "joined by their names alone: row 3, row 4, row 9, row 10;") {
		t.Errorf("%v\n%s", err, full)
	}
}
