package bundle_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/phase/bundle"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
)

// five is five equal wires round a rod, eleven round them with two fillers among, tape over the first layer; and a leg of three that is
// twisted, one of two that is straight.
const five = `format = 1
[[termination]]
id = "A"
[[termination]]
id = "B"
[[termination]]
id = "C"
[[breakout]]
id = "J"
zone_mm = 30.0
WIRES[[branch]]
id = "T"
from = "A"
to = "J"
length_mm = 800.0
make = "laid"
outer = "RH"
bend_mm = 40.0
bend_deg = 90.0
  [[branch.layer]]
  of = ["0", "1", "2", "3", "4"]
  fillers = 1
  [[branch.layer]]
  of = ["5", "6", "7", "8", "9", "10", "11", "12", "13"]
  fillers = 2
  filler_mm = 1.09
  bind_mm = 0.2
[[branch]]
id = "L"
from = "J"
to = "B"
length_mm = 400.0
make = "twisted"
  [[branch.layer]]
  of = ["0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "10"]
  lay_mm = 90.0
[[branch]]
id = "M"
from = "C"
to = "J"
length_mm = 300.0
make = "straight"
`

func roundARod(t *testing.T) *sheet.Sheet {
	t.Helper()
	var b strings.Builder
	for k := range 14 {
		to := "B"
		if k > 10 {
			to = "C"
		}
		role := []string{"power", "spare"}[k%2]
		fmt.Fprintf(&b, "[[wire]]\nid = \"%d\"\nfrom = \"A:%d\"\nto = \"%s:%d\"\nspec = \"AS22759/32\"\nsize = \"22\"\nrole = %q\n", k,
			k, to, k, role)
	}
	return calctest.Built(t, strings.Replace(five, "WIRES", b.String(), 1))
}

// Every figure of every layer of every example, told a second time from where its pieces lie: diameters by the pieces that stand
// furthest out, lay by the ratio, hands in turn, lay loss and angle by the helix (reference, lay: k = √(1 + (2πR/L)²), tan λ = 2πR/L),
// turns by the length that is laid, which stops a diameter before each sorted zone; nothing lies in anything else; the bend by its rule.
func TestFiguresFromWherePiecesLie(t *testing.T) {
	sheets := map[string]*sheet.Sheet{"five round a rod": roundARod(t)}
	for _, name := range []string{"trunk", "example", "feeds", "built-up"} {
		sheets[name] = calctest.Laid(t, name)
	}
	seen := map[string]int{}
	for name, s := range sheets {
		for i := range s.Branches {
			b, mb := &s.Branches[i], &s.H.Branches[i]
			if len(b.Layers) == 0 {
				continue
			}
			at := name + " " + mb.ID
			near := func(what string, got, want, tol float64) {
				t.Helper()
				if !(math.Abs(got-want) <= tol) {
					t.Errorf("%s: %s is %v, want %v", at, what, got, want)
				}
			}
			laid, standing := float64(mb.LengthMM), catalogue.House
			for _, end := range []string{mb.From, mb.To} {
				if k, is := s.Index.Breakout[end]; is {
					laid -= float64(s.H.Breakouts[k].ZoneMM.Or(s.Limits.ZoneMM) + b.OverMM)
				}
			}
			for _, id := range b.Components {
				standing = catalogue.Weakest(standing, s.Dia(id).Standing)
			}
			near("laid length", float64(b.LaidMM), max(0, laid), 1e-6)
			if b.Standing != standing {
				t.Errorf("%s stands as %s, its weakest piece as %s", at, b.Standing, standing)
			}
			thick, under := 0.0, 0.0
			for k := range b.Layers {
				l, as := &b.Layers[k], &b.As[k]
				at := fmt.Sprintf("%s layer %d", at, k)
				near := func(what string, got, want, tol float64) {
					t.Helper()
					seen[what]++
					if !(math.Abs(got-want) <= tol) {
						t.Errorf("%s: %s is %v, want %v", at, what, got, want)
					}
				}
				out, top, fillers, spares := 0.0, 0.0, 0, 0
				var ids []string
				for n, m := range l.Members {
					r := math.Hypot(float64(m.X), float64(m.Y))
					out, top, thick = max(out, r+float64(m.D)/2), max(top, r), max(thick, float64(m.D))
					near("lay loss of a piece", float64(m.Loss), math.Sqrt(1+pow2(2*math.Pi*r/nought(float64(l.LayMM)))), 1e-9)
					for _, o := range l.Members[:n] {
						apart := math.Hypot(float64(m.X-o.X), float64(m.Y-o.Y))
						if b.Make == model.MakeLaid && l.Closes && apart < float64(m.D+o.D)/2*0.995 {
							t.Errorf("%s: %s lies in %s: %v apart", at, m.ID, o.ID, apart)
						}
					}
					if k > 0 && b.Make == model.MakeLaid && 2*r-float64(m.D) < float64(l.BedMM)-1e-6 {
						t.Errorf("%s: %s lies in the layer beneath", at, m.ID)
					}
					kind := sheet.OfWire
					switch c, is := s.Index.Component(m.ID); {
					case m.ID == "filler":
						kind = sheet.OfFiller
						fillers++
					case is && c.Unit:
						kind = sheet.OfUnit
					case is && s.H.Wires[c.At].Role.V == model.RoleSpare:
						kind = sheet.OfSpare
						spares++
					}
					if kind != sheet.OfFiller {
						ids = append(ids, m.ID)
						near("diameter of a piece", float64(m.D), float64(s.Dia(m.ID).Nominal), 0)
					}
					if m.Kind != kind {
						t.Errorf("%s: %s is of kind %d, want %d", at, m.ID, m.Kind, kind)
					}
				}
				near("fillers", float64(l.Fillers), float64(fillers), 0)
				near("spares", float64(l.Spares), float64(spares), 0)
				if a, z := slices.Sorted(slices.Values(ids)), slices.Sorted(slices.Values(as.Of)); !slices.Equal(a, z) {
					t.Errorf("%s holds %v, and %v are laid", at, a, z)
				}
				bind := float64(as.BindMM.V)
				near("OD", float64(l.OverMM), 2*out+bind, 1e-6)
				lay := float64(as.LayMM.V)
				turns := len(ids) > 1 && b.Make != model.MakeStraight && !(k == 0 && len(l.Members) == 1) || k > 0
				switch {
				case !turns:
					lay = 0
				case lay <= 0:
					lay = float64(s.Limits.LayRatio) * float64(l.OverMM)
				}
				near("lay", float64(l.LayMM), lay, 1e-6)
				near("lay loss", float64(l.Loss), math.Sqrt(1+pow2(2*math.Pi*top/nought(lay))), 1e-9)
				near("lay angle", float64(l.LayDeg), math.Atan(2*math.Pi*top/nought(lay))*180/math.Pi, 1e-9)
				want := 0.0
				if lay > 0 {
					want = float64(b.LaidMM) / lay
				}
				near("turns", float64(l.Turns), want, 1e-9)
				hand := mb.Outer.Or(s.Limits.Outer)
				if (len(b.Layers)-1-k)%2 == 1 {
					hand = hand.Other()
				}
				if lay == 0 {
					hand = model.HandStraight
				}
				if l.Hand != hand {
					t.Errorf("%s is %s, want %s", at, l.Hand, hand)
				}
				if k > 0 {
					near("bed", float64(l.BedMM), under, 1e-9)
					if l.Room > 0 && l.Takes != len(l.Members)+l.Room || l.Room == 0 && l.Takes > len(l.Members) || l.Room < 0 {
						t.Errorf("%s: %d pieces, takes %d, room for %d", at, len(l.Members), l.Takes, l.Room)
					}
				}
				under = float64(l.TapeMM)
				if l.TapeMM > l.OverMM+1e-9 || b.Make == model.MakeLaid && l.TapeMM < 0.8*l.OverMM {
					t.Errorf("%s: tape diameter %v, OD %v", at, l.TapeMM, l.OverMM)
				}
				built := 0.0
				if k == 0 && len(b.Layers) > 1 {
					built = bind
				}
				near("built up by", float64(l.BuiltMM), built, 0)
				if tracer := l.Tracer; tracer != "" && (k == 0 || l.Members[0].ID != tracer || slices.ContainsFunc(l.Members[1:],
					func(m sheet.Member) bool {
						return bundle.Looks(s, m.ID) == bundle.Looks(s, tracer)
					})) {
					t.Errorf("%s: its tracer is %s", at, tracer)
				}
			}
			last := &b.Layers[len(b.Layers)-1]
			if b.Predicted.Over == b.OverMM { // nothing that a shop has learned moves it
				near("OD of the branch", float64(b.OverMM), float64(last.OverMM), 1e-9)
			}
			if !(b.OverMinMM <= b.OverMM && b.OverMM <= b.OverMaxMM && b.TapeMinMM <= b.TapeMM+1e-9) {
				t.Errorf("%s: %v (%v to %v), tape from %v", at, b.OverMM, b.OverMinMM, b.OverMaxMM, b.TapeMinMM)
			}
			rule, least := "10 x thickest piece", 10*thick
			if six := 6 * float64(b.OverMM); six > least {
				rule, least = "6 x OD", six
			}
			near("least bend", float64(b.Bend.MinMM), least, 1e-9)
			if b.Bend.Rule != rule {
				t.Errorf("%s bends by %q, want %q", at, b.Bend.Rule, rule)
			}
			buried := 0
			for k, l := range b.Layers {
				for _, m := range l.Members {
					if m.Kind != sheet.OfFiller && slices.ContainsFunc(b.Layers[k+1:], func(o sheet.Layer) bool {
						return slices.ContainsFunc(o.Members, func(x sheet.Member) bool {
							return x.Kind != sheet.OfFiller &&
								x.Leaves > m.Leaves
						})
					}) {
						buried++
					}
				}
			}
			near("buried", float64(b.Buried), float64(buried), 0)
		}
	}
	for _, what := range []string{"turns", "lay", "bed", "lay angle", "OD"} {
		if seen[what] < 10 {
			t.Errorf("only %d of %s: the test shows nothing of it", seen[what], what)
		}
	}
}

func pow2(v float64) float64 { return v * v }

// nought is a lay length as it stands beneath the line; a layer that is straight has no end of one.
func nought(lay float64) float64 {
	if lay <= 0 {
		return math.Inf(1)
	}
	return lay
}

// The rod in the middle of five fills the hole between them: 1/sin 36° − 1 = 0.7013 of a wire of 1.09 mm, and counts as the filler of
// its layer; five on a circle of 1.09 · 1/(2 sin 36°) are 1.09 · (1 + 1/sin 36°) = 2.944 mm over. With a filler of another size in the
// file it is a sixth piece.
func TestTheRodOfFive(t *testing.T) {
	s := roundARod(t)
	l := &s.Branches[0].Layers[0]
	calctest.Near(t, "rod", float64(l.FillerMM), 1.09*(1/math.Sin(math.Pi/5)-1), 1e-6)
	calctest.Near(t, "OD", float64(l.OverMM), 1.09*(1+1/math.Sin(math.Pi/5)), 1e-6)
	rod := l.Members[slices.IndexFunc(l.Members, func(m sheet.Member) bool { return m.Kind == sheet.OfFiller })]
	if l.Fillers != 1 || len(l.Members) != 6 || rod.X != 0 || rod.Y != 0 || rod.D != l.FillerMM || rod.Loss != 1 {
		t.Errorf("%d fillers of %d, %+v", l.Fillers, len(l.Members), rod)
	}
	for mm, wantD := range map[string]float64{"0.76": 1.09 * (1/math.Sin(math.Pi/5) - 1), "0.8": 1.09 * (1/math.Sin(math.Pi/5) - 1),
		"1.0": 1.0} {
		h := calctest.Parse(t, strings.Replace(strings.Replace(five, "fillers = 1\n", "fillers = 1\n  filler_mm = "+mm+"\n", 1),
			"WIRES", wiresOf(s), 1))
		got := calctest.Built(t, "format = 1\n")
		got = rebuilt(got, h)
		calctest.Near(t, "a filler of "+mm, float64(got.Branches[0].Layers[0].FillerMM), wantD, 1e-6)
	}
}

// wiresOf are the wires of that loom as a file has them.
func wiresOf(s *sheet.Sheet) string {
	var b strings.Builder
	for _, w := range s.H.Wires {
		fmt.Fprintf(&b, "[[wire]]\nid = %q\nfrom = %q\nto = %q\nspec = %q\nsize = %q\n", w.ID, w.From.V, w.To.V, w.Spec, w.Size)
	}
	return b.String()
}

func rebuilt(s *sheet.Sheet, h *model.Harness) *sheet.Sheet { return calc.Build(h, s.Base, nil) }

// A bend by hand: 40 mm inside over 90 degrees of that trunk is an arc of (40 + OD/2) · π/2 along its axis.
func TestBendOfTheTrunk(t *testing.T) {
	s := roundARod(t)
	b := &s.Branches[0]
	if !b.Bend.MismatchMM.Set || b.Layers[1].FlatMM <= b.Layers[0].FlatMM || b.Layers[1].BentMM > b.Layers[1].FlatMM {
		t.Errorf("%+v %v %v", b.Bend, b.Layers[0].FlatMM, b.Layers[1].FlatMM)
	}
	// Straight, wires r out from the axis are r · π/2 longer outside and as much shorter inside: r · π in all.
	for k := range b.Layers {
		r := unit.Millimetre(0)
		for _, m := range b.Layers[k].Members {
			r = max(r, unit.Millimetre(math.Hypot(float64(m.X), float64(m.Y))))
		}
		calctest.Near(t, fmt.Sprintf("layer %d straight", k), float64(b.Layers[k].FlatMM), float64(r)*math.Pi, 1e-6)
	}
}
