package alike

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// Lines and what a person reads in them: cavity or near end; far end; name; colour; size; remark.
func TestLines(t *testing.T) {
	for _, c := range []struct {
		name, lines, want string
		runs              bool
	}{
		{"bars, the far end last", `
A1 | green/pink | Radio live | Radio.1
A2 | white | Radio memory | Radio.2
A3 | pink | Radio ground | Radio.3`, `
A1; Radio.1; Radio live; green/pink; ;
A2; Radio.2; Radio memory; white; ;
A3; Radio.3; Radio ground; pink; ;`, false},
		{"commas and a word for the arrow", `
1, orange, pump feed to Fuel pump:+
2, pink, pump ground to Fuel pump:-
3, black with orange stripe, heater to Lambda:1`, `
1; Fuel pump:+; pump feed; orange; ;
2; Fuel pump:-; pump ground; pink; ;
3; Lambda:1; heater; black with orange stripe; ;`, false},
		{"a dash in a name, and the cavity before its device", `
3 – Speed + – pin 1 of Left wheel
5 – Speed - – pin 2 of Left wheel`, `
3; Left wheel:1; Speed +; ; ;
5; Left wheel:2; Speed -; ; ;`, false},
		{"sizes with decimals alone", `
1 - green/red - 0.5 - left lamp -> front plug 4
2 - green/white - 0.75 - right lamp -> front plug 5
8 - empty`, `
1; front plug 4; left lamp; green/red; 0.5;
2; front plug 5; right lamp; green/white; 0.75;
8; ; empty; ; ;`, false},
		{"gauges alone", `
1: red, 20, ignition
2: black, 16, ground`, `
1; ; ignition; red; 20;
2; ; ground; black; 16;`, false},
		{"volts are no gauges", `
1 - red - 12 - supply
2 - blue - 24 - dimmed`, `
1; ; supply; red; ; 12
2; ; dimmed; blue; ; 24`, false},
		{"colour and size in one piece", `
1: red 20 AWG, to F3
2: black 16 AWG, to G1`, `
1; F3; ; red; 20 AWG;
2; G1; ; black; 16 AWG;`, false},
		{"the colour behind the far end", `
7 -> Left motor M1 red
8 -> Left motor M2 black`, `
7; Left motor M1; ; red; ;
8; Left motor M2; ; black; ;`, false},
		{"a cavity in brackets is no size", `
1, Crank +, to Crank sensor (1)
2, Crank -, to Crank sensor (2)`, `
1; Crank sensor:1; Crank +; ; ;
2; Crank sensor:2; Crank -; ; ;`, false},
		{"both ends, the name behind the colour", `
X1 terminal A -> Cam sensor terminal A: pink, cam supply
X1 terminal B -> Cam sensor terminal B: violet, cam signal`, `
X1:A; Cam sensor:A; cam supply; pink; ;
X1:B; Cam sensor:B; cam signal; violet; ;`, true},
		{"both ends by a word", `
Logger pin 1 to Radio pin 1 | 18 AWG, white
Logger pin 2 to Radio pin 2 | 24 AWG, yellow`, `
Logger:1; Radio:1; ; white; 18 AWG;
Logger:2; Radio:2; ; yellow; 24 AWG;`, true},
		{"cavities behind a comma", `
Box, pin 1 to Coil 1, pin A | feed, GY/YE, 16ga
Box, pin 2 to Coil 1, pin B | trigger, GN, 22ga`, `
Box:1; Coil 1:A; feed; GY/YE; 16ga;
Box:2; Coil 1:B; trigger; GN; 22ga;`, true},
		{"a dash before the cavity, and one before the values", `
Box - A => Head lamp - 56a : blue, main beam
Box - B => Head lamp - 56b : brown, dip beam`, `
Box:A; Head lamp:56a; main beam; blue; ;
Box:B; Head lamp:56b; dip beam; brown; ;`, true},
		{"a remark behind the values", `
Bilge feed: Relay 87 → Pump 1, red, 14 AWG (new, see photo)
Oil lamp: Box 7 → Lamp row 1, white, 18 AWG`, `
Relay 87; Pump 1; Bilge feed; red; 14 AWG; new, see photo
Box 7; Lamp row 1; Oil lamp; white; 18 AWG;`, true},
		{"a comma before the word for a cavity", `
J1, pin 3 => Coil 1, pin A (1.0mm² BLU)
J1, pin 5 => Coil 1, pin B (2.5mm² RED/VIO)`, `
J1:3; Coil 1:A; ; BLU; 1.0mm²;
J1:5; Coil 1:B; ; RED/VIO; 2.5mm²;`, true},
		{"dashes before cavities and a name behind a bar", `
X10 - A to Oil pressure - 1 | Oil pressure 5V
X10 - B to Oil pressure - 2 | Oil pressure signal`, `
X10:A; Oil pressure:1; Oil pressure 5V; ; ;
X10:B; Oil pressure:2; Oil pressure signal; ; ;`, true},
		{"far ends with their cavity in brackets", `
3 - RED/BLU - fan relay feed - Fan relay (30)
5 - WHT - fan coil - Fan relay (85)`, `
3; Fan relay:30; fan relay feed; RED/BLU; ;
5; Fan relay:85; fan coil; WHT; ;`, false},
		{"the name in brackets behind the far end", `
Pin 1: red → fuse box F2 (switched 12 V)
Pin 2: black → frame stud (ground)
Pin 3: white → left coil (2)`, `
1; fuse box F2; switched 12 V; red; ;
2; frame stud; ground; black; ;
3; left coil (2); ; white; ;`, false},
		{"counted lines", `
1. P1:A -> M1:1 (red)
2. P1:B -> M1:2 (black)`, `
P1:A; M1:1; ; red; ;
P1:B; M1:2; ; black; ;`, true},
	} {
		texts := strings.Split(strings.TrimSpace(c.lines), "\n")
		read := Cavities
		if c.runs {
			if lines, ok := Cavities(texts); ok {
				t.Errorf("%s: cavities of one connector: %+v", c.name, lines)
			}
			read = Runs
		}
		lines, ok := read(texts)
		var got []string
		for _, l := range lines {
			got = append(got, strings.TrimSpace(strings.Join([]string{l.Pin + l.From, l.To, l.Signal, l.Colour, l.Size, l.Remark}, "; ")))
		}
		if diff := cmp.Diff(strings.Split(strings.TrimSpace(c.want), "\n"), got); !ok || diff != "" {
			t.Errorf("%s: read: %v\n%s", c.name, ok, diff)
		}
	}
}

// Lines that tell no wire.
func TestLinesOfSomethingElse(t *testing.T) {
	for _, lines := range []string{
		"1. 20 AWG red wire, 5 m\n2. 16 AWG black wire, 3 m",
		"1. Fit the red plug\n2. Label everything",
		"2 x housing\n60 x pins",
		"3: horn\n3: lamp",
		"4 - red lead of the lamp, which is far too long to be the name of anything at all\n5 - red",
	} {
		if got, ok := Cavities(strings.Split(lines, "\n")); ok {
			t.Errorf("%q is read as %+v", lines, got)
		}
	}
	for _, lines := range []string{
		"give the key to Anna\ntake the loom to Ben",
		"red 12 AWG from battery to starter\nblack 12 AWG from battery to frame",
		"P1:A M1:1\nP1:B M1:2",
	} {
		if got, ok := Runs(strings.Split(lines, "\n")); ok {
			t.Errorf("%q is read as %+v", lines, got)
		}
	}
}
