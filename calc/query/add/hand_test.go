package add

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
)

// byHand is the harness of TestAgainstTheHarnessByHand as a person types it from the kinds of the
// catalogue. The feed: 4 × 0.95 A = 3.8 A, for which AC 43.13-1B table 11-9 has 22 AWG (5 A at
// 150 C). Colours: the first code, 0 to 9 and then 90, 91 …, that neither end has yet.
const byHand = `format = 1

[[termination]]
id     = "P1"
name   = "Bulkhead"
insert = "14-35"
gender = "pin"
key    = "N"
mount  = "inline"
datum  = "boot lip"
boot   = "boot-straight-14"

[[termination]]
id       = "INJ1"
name     = "Fuel injector 1"
device   = "fuel injector, high impedance"
cavities = ["1", "2"]

[[termination]]
id       = "INJ2"
name     = "Fuel injector 2"
device   = "fuel injector, high impedance"
cavities = ["1", "2"]

[[termination]]
id       = "INJ3"
name     = "Fuel injector 3"
device   = "fuel injector, high impedance"
cavities = ["1", "2"]

[[termination]]
id       = "INJ4"
name     = "Fuel injector 4"
device   = "fuel injector, high impedance"
cavities = ["1", "2"]

[[termination]]
id       = "CRK1"
name     = "Crank sensor"
device   = "crank sensor, variable reluctance"
cavities = ["1", "2"]

[[termination]]
id       = "TMP1"
name     = "Coolant temperature 1"
device   = "coolant temperature"
cavities = ["1", "2"]

[[termination]]
id       = "TMP2"
name     = "Coolant temperature 2"
device   = "coolant temperature"
cavities = ["1", "2"]

[[breakout]]
id = "J1"

[[splice]]
id = "S1"
at = "J1"

[[wire]]
id     = "101"
signal = "Injectors feed"
from   = "P1:1"
to     = "S1"
spec   = "AS22759/32"
size   = "22"
colour = "0"
amps   = 3.8
role   = "power"

[[wire]]
id     = "102"
signal = "Fuel injector 1 feed"
from   = "S1"
to     = "INJ1:1"
spec   = "AS22759/32"
size   = "22"
colour = "0"
amps   = 0.95
role   = "power"
return = "103"

[[wire]]
id     = "103"
signal = "Fuel injector 1 switched low side"
from   = "P1:2"
to     = "INJ1:2"
spec   = "AS22759/32"
size   = "22"
colour = "1"
amps   = 0.95
role   = "power"

[[wire]]
id     = "104"
signal = "Fuel injector 2 feed"
from   = "S1"
to     = "INJ2:1"
spec   = "AS22759/32"
size   = "22"
colour = "0"
amps   = 0.95
role   = "power"
return = "105"

[[wire]]
id     = "105"
signal = "Fuel injector 2 switched low side"
from   = "P1:3"
to     = "INJ2:2"
spec   = "AS22759/32"
size   = "22"
colour = "2"
amps   = 0.95
role   = "power"

[[wire]]
id     = "106"
signal = "Fuel injector 3 feed"
from   = "S1"
to     = "INJ3:1"
spec   = "AS22759/32"
size   = "22"
colour = "0"
amps   = 0.95
role   = "power"
return = "107"

[[wire]]
id     = "107"
signal = "Fuel injector 3 switched low side"
from   = "P1:4"
to     = "INJ3:2"
spec   = "AS22759/32"
size   = "22"
colour = "3"
amps   = 0.95
role   = "power"

[[wire]]
id     = "108"
signal = "Fuel injector 4 feed"
from   = "S1"
to     = "INJ4:1"
spec   = "AS22759/32"
size   = "22"
colour = "0"
amps   = 0.95
role   = "power"
return = "109"

[[wire]]
id     = "109"
signal = "Fuel injector 4 switched low side"
from   = "P1:5"
to     = "INJ4:2"
spec   = "AS22759/32"
size   = "22"
colour = "4"
amps   = 0.95
role   = "power"

[[wire]]
id     = "110"
signal = "Crank sensor signal +"
from   = "P1:6"
to     = "CRK1:1"
spec   = "AS22759/32"
size   = "22"
colour = "5"
amps   = 0.012
role   = "signal"
return = "111"

[[wire]]
id     = "111"
signal = "Crank sensor signal -"
from   = "P1:7"
to     = "CRK1:2"
spec   = "AS22759/32"
size   = "22"
colour = "6"
amps   = 0.012
role   = "signal"

[[wire]]
id     = "112"
signal = "Coolant temperature 1 signal"
from   = "P1:9"
to     = "TMP1:1"
spec   = "AS22759/32"
size   = "22"
colour = "7"
amps   = 0.0019
role   = "signal"
return = "113"

[[wire]]
id     = "113"
signal = "Coolant temperature 1 sensor ground"
from   = "P1:10"
to     = "TMP1:2"
spec   = "AS22759/32"
size   = "22"
colour = "8"
amps   = 0.0019
role   = "signal"

[[wire]]
id     = "114"
signal = "Coolant temperature 2 signal"
from   = "P1:11"
to     = "TMP2:1"
spec   = "AS22759/32"
size   = "22"
colour = "9"
amps   = 0.0019
role   = "signal"
return = "115"

[[wire]]
id     = "115"
signal = "Coolant temperature 2 sensor ground"
from   = "P1:12"
to     = "TMP2:2"
spec   = "AS22759/32"
size   = "22"
colour = "90"
amps   = 0.0019
role   = "signal"

[[wire]]
id        = "116"
from      = "P1:13"
spec      = "AS22759/32"
size      = "22"
colour    = "91"
role      = "spare"
capped_at = "J1"

[[wire]]
id        = "117"
from      = "P1:14"
spec      = "AS22759/32"
size      = "22"
colour    = "92"
role      = "spare"
capped_at = "J1"

[[wire]]
id        = "118"
from      = "P1:15"
spec      = "AS22759/32"
size      = "22"
colour    = "93"
role      = "spare"
capped_at = "J1"

[[unit]]
id         = "C1"
name       = "Crank sensor"
wires      = ["110", "111"]
build      = "pair"
shield     = true
drain_from = "P1:8"
drain_to   = "cut"

[[branch]]
id        = "T1"
from      = "P1"
to        = "J1"
length_mm = 600.0

[[branch]]
id        = "L1"
from      = "J1"
to        = "INJ1"
length_mm = 210.0

[[branch]]
id        = "L2"
from      = "J1"
to        = "INJ2"
length_mm = 230.0

[[branch]]
id        = "L3"
from      = "J1"
to        = "INJ3"
length_mm = 250.0

[[branch]]
id        = "L4"
from      = "J1"
to        = "INJ4"
length_mm = 270.0

[[branch]]
id        = "L5"
from      = "J1"
to        = "CRK1"
length_mm = 180.0

[[branch]]
id        = "L6"
from      = "J1"
to        = "TMP1"
length_mm = 140.0

[[branch]]
id        = "L7"
from      = "J1"
to        = "TMP2"
length_mm = 160.0
`

// must builds the sheet of what was added.
func must(t *testing.T, a Added, err error) *sheet.Sheet {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
	return calc.Build(a.H, calctest.Catalogue(t), nil)
}

// bench makes the harness by the questions of this package.
func bench(t *testing.T) *sheet.Sheet {
	t.Helper()
	s := calc.Build(&model.Harness{}, calctest.Catalogue(t), nil)
	a, err := Connector(s, ConnectorAsk{Insert: "14-35", Name: "Bulkhead"})
	s = must(t, a, err)
	h := *s.H
	h.Breakouts = []model.Breakout{{ID: "J1"}}
	h.Branches = []model.Branch{{ID: "T1", From: "P1", To: "J1", LengthMM: 600}}
	s = calc.Build(&h, s.Base, nil)
	for _, ask := range []DevicesAsk{
		{Kind: "injector-high", Count: 4, LengthsMM: []unit.Millimetre{210, 230, 250, 270}},
		{Kind: "crank-reluctor", Count: 1, LengthsMM: []unit.Millimetre{180}},
		{Kind: "temperature", Count: 2, LengthsMM: []unit.Millimetre{140, 160}},
	} {
		ask.At, ask.Controller = "J1", "P1"
		a, err := Devices(s, ask)
		s = must(t, a, err)
		for _, g := range a.Says {
			if testing.Verbose() {
				t.Logf("%d %-11s %v %v: %s", g.Kind, g.About, g.Standing, g.Worked, g.Says)
			}
		}
	}
	a, err = Spares(s, SparesAsk{Count: 3, From: "P1", CappedAt: "J1"})
	return must(t, a, err)
}

func TestAgainstTheHarnessByHand(t *testing.T) {
	got, want := bench(t).H, calctest.Parse(t, byHand)
	if len(got.Wires) != len(want.Wires) {
		t.Fatalf("%d wires, want %d", len(got.Wires), len(want.Wires))
	}
	for k := range want.Wires {
		if d := cmp.Diff(want.Wires[k], got.Wires[k]); d != "" {
			t.Errorf("wire %s:\n%s", want.Wires[k].ID, d)
		}
	}
	if d := cmp.Diff(want, got); d != "" && !t.Failed() {
		t.Errorf("the harness:\n%s", d)
	}
}

func TestTheHarnessCanBeBuilt(t *testing.T) {
	s := bench(t)
	for _, g := range calc.Complete(s.H, s.Base, s).Snags {
		if g.Level == sheet.Stop {
			t.Errorf("%+v", g)
		}
	}
}
