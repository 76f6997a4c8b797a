package catalogue

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"contralay/model/unit"
)

func mustDefault(t *testing.T) *Catalogue {
	t.Helper()
	c, err := Default()
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func mustRead(t *testing.T, text string) *Catalogue {
	t.Helper()
	c, err := Read(strings.NewReader(text), "shop.toml")
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// origins lists every entry with where it comes from.
func origins(c *Catalogue) map[string]Origin {
	all := map[string]Origin{}
	for k, e := range c.Wires {
		all["wire "+k.Spec+" "+k.Size] = e.Origin
	}
	for _, e := range c.Tubes {
		all["tube "+e.ID] = e.Origin
	}
	for k, e := range c.Boots {
		all["boot "+k] = e.Origin
	}
	for k, e := range c.Transitions {
		all["transition "+k] = e.Origin
	}
	for k, e := range c.Contacts {
		all["contact "+k] = e.Origin
	}
	for k, e := range c.Inserts {
		all["insert "+k] = e.Origin
	}
	for k, e := range c.Faces {
		all["face "+k] = e.Origin
	}
	for k, e := range c.Splices {
		all["splice "+k] = e.Origin
	}
	return all
}

// unsourced lists the entries that do not say where they come from or how far
// they can be trusted. A source of less than three words names no place.
func unsourced(c *Catalogue) []string {
	var bad []string
	for name, o := range origins(c) {
		if len(strings.Fields(o.Source)) < 3 || !o.Standing.Known() {
			bad = append(bad, name)
		}
	}
	slices.Sort(bad)
	return bad
}

func TestEveryEntryHasSourceAndStanding(t *testing.T) {
	c := mustDefault(t)
	if bad := unsourced(c); len(bad) > 0 {
		t.Errorf("without source or standing: %v", bad)
	}
	// The check itself: a catalogue that breaks the rule in each way is caught.
	good := Origin{"drawing 17 of the maker", Published}
	broken := Merge(&Catalogue{
		Wires:   map[WireKey]Wire{{"X", "22"}: {Origin: Origin{"", Published}}},
		Tubes:   []Tube{{ID: "T", Origin: Origin{"drawing 17 of the maker", ""}}, {ID: "G", Origin: good}},
		Boots:   map[string]Boot{"B": {Origin: Origin{"drawing 17 of the maker", "certain"}}},
		Inserts: map[string]Insert{"I": {Origin: Origin{"?", Memory}}},
	}, nil)
	if got, want := fmt.Sprint(unsourced(broken)), "[boot B insert I tube T wire X 22]"; got != want {
		t.Errorf("the check caught %s, want %s", got, want)
	}
}

// Counts of the sources: a size that is lost in reading, or stands in two files, shows here.
func TestNothingIsLost(t *testing.T) {
	c := mustDefault(t)
	for _, tt := range []struct{ spec, sizes string }{
		{"AS22759/11", "26 24 22 20 18 16"},
		{"AS22759/16", "24 22 20 18 16 14 12 10 8"},
		{"AS22759/32", "30 28 26 24 22 20 18 16 14 12"},
		{"AS22759/34", "24 22 20 18 16 14 12 10 8 6 4 2 1 1/0 2/0 3/0 4/0"},
		{"AS22759/41", "26 24 22 20 18 16 14 12 10 8 6 4 2 1 1/0 2/0 3/0 4/0"},
		{"AS22759/43", "26 24 22 20 18 16 14 12 10 8 6 4 2 1 1/0 2/0 3/0 4/0"},
		{"AS22759/44", "28 26 24 22 20 18 16 14 12"},
		{"ISO 6722 thin", "0.35mm2 0.5mm2 0.75mm2 1mm2 1.5mm2 2mm2 2.5mm2 3mm2 4mm2 6mm2"},
		{"SAE J1128 GXL", "20 18 16 14 12 10 8"},
		{"SAE J1128 SXL", "20 18 16 14"},
		{"SAE J1128 TXL", "24 22 20 18 16 14 12 10 8"},
	} {
		if got := strings.Join(c.Sizes(tt.spec), " "); got != tt.sizes {
			t.Errorf("%s: thin to thick %s, want %s", tt.spec, got, tt.sizes)
		}
	}
	if got, want := len(c.Specs()), 11; got != want {
		t.Errorf("%d specs, want %d: %v", got, want, c.Specs())
	}
	want := "AS23053/1 11, AS23053/4 7, AS23053/4 class 2 7, AS23053/4 class 3 6, AS23053/5 15, AS23053/8 11, AS23053/13 12, AS23053/16 " +
		"13, AS23053/16 thin 9"
	var got []string
	for _, k := range c.Kinds() {
		got = append(got, fmt.Sprint(k, " ", len(c.TubesOf(k))))
	}
	if g := strings.Join(got, ", "); g != want {
		t.Errorf("tubes %s, want %s", g, want)
	}
	if b, s, k := len(c.Boots), len(c.Splices), strings.Join(c.ContactSizes(), " "); b != 27 || s != 6 ||
		k != "22M 22 22D 23 20 16 12 10 8 4 0" {
		t.Errorf("%d boots, %d splices, contacts %s", b, s, k)
	}
}

func TestWireAgainstPublished(t *testing.T) {
	c := mustDefault(t)
	const rounding = 0.0005 // of the value: four figures are kept
	for _, tt := range []struct {
		spec, size string
		kilofoot   float64 // ohm/1000 ft
		standing   Standing
		source     string
	}{
		{"AS22759/32", "22", 16.20, Published, "AC 43.13-1B table 11-9"},
		{"AS22759/34", "20", 9.88, Published, "AC 43.13-1B table 11-9"},
		{"AS22759/16", "18", 6.23, Published, "AC 43.13-1B table 11-9"},
		{"AS22759/32", "16", 4.81, Published, "AC 43.13-1B table 11-9"},
		{"AS22759/32", "14", 3.06, Published, "AC 43.13-1B table 11-9"},
		{"AS22759/32", "12", 2.02, Published, "AC 43.13-1B table 11-9"},
		{"AS22759/34", "10", 1.26, Published, "AC 43.13-1B table 11-9"},
		{"AS22759/32", "24", 26.2, Memory, "tin-plated class; AC 43.13-1B prints the alloy's 28.40"},
		{"AS22759/34", "1", 0.149, Published, "a maker's drawing of the tin class"},
		{"AS22759/34", "00", 0.091, Published, "a maker's drawing of the tin class"},
		{"AS22759/41", "22", 16.0, Published, "a maker's drawing of the /41 class, table I"},
		{"AS22759/41", "4/0", 0.056, Published, "a maker's drawing of the /41 class, table I"},
		{"AS22759/44", "22", 15.1, Published, "AS22759/44 as quoted in a public script"},
		{"AS22759/43", "10", 1.26 / 1.06, Memory, "tin limit ÷ 1.06, kept to three figures"},
	} {
		w, ok := c.Wire(tt.spec, tt.size)
		if !ok {
			t.Errorf("no %s %s", tt.spec, tt.size)
			continue
		}
		tol := rounding
		if tt.standing == Memory {
			tol = 0.003 // computed from three figures
		}
		if got := float64(w.OhmPerKm) / unit.KilometrePerKilofoot; math.Abs(got/tt.kilofoot-1) > tol {
			t.Errorf("%s %s: %.4g ohm/1000 ft, want %g (source: %s)", tt.spec, tt.size, got, tt.kilofoot, tt.source)
		}
		if w.OhmStanding != tt.standing {
			t.Errorf("%s %s: resistance stands %q, want %q (source: %s)", tt.spec, tt.size, w.OhmStanding, tt.standing, tt.source)
		}
	}
	for _, tt := range []struct {
		spec, size string
		least, max float64 // finished diameter, in
		standing   Standing
		source     string
	}{
		{"AS22759/32", "22", 0.041, 0.045, Memory, "AS22759/32, from memory"},
		{"AS22759/32", "18", 0.058, 0.062, Memory, "largest: a maker's drawing of the /32 class"},
		{"AS22759/41", "22", 0.048, 0.052, Published, "a maker's drawing of the /41 class, table I"},
		{"AS22759/41", "4/0", 0.653, 0.697, Published, "a maker's drawing of the /41 class, table I"},
		{"AS22759/34", "22", 0.048, 0.052, Published, "a maker's drawing of the /34 class, quoted second hand: 1.22 to 1.32 mm"},
		{"AS22759/16", "22", 0.050, 0.054, Memory, "AS22759/16, from memory"},
	} {
		w, _ := c.Wire(tt.spec, tt.size)
		const tol = 0.008 // mm: diameter rounded to 0.01, tolerance to 0.001
		lo, hi := float64(w.OverMM-w.TolMM), float64(w.OverMM+w.TolMM)
		if math.Abs(lo-tt.least*25.4) > tol || math.Abs(hi-tt.max*25.4) > tol {
			t.Errorf("%s %s: %.3f to %.3f mm, want %.3f to %.3f (source: %s)", tt.spec, tt.size, lo, hi, tt.least*25.4, tt.max*25.4,
				tt.source)
		}
		if w.OverStanding != tt.standing {
			t.Errorf("%s %s: diameter stands %q, want %q", tt.spec, tt.size, w.OverStanding, tt.standing)
		}
	}
}

// Copper alone, without plating, lay or tolerance, is the least a wire can have:
// no maximum lies below it or far above.
func TestResistanceIsCopper(t *testing.T) {
	for k, w := range mustDefault(t).Wires {
		ideal := 17.241 / float64(w.AreaMM2) // Ω/km at 100 % IACS; source: IEC 60028, from memory
		if r := float64(w.OhmPerKm) / ideal; r < 1.04 || r > 1.28 {
			t.Errorf("%v: %.3f of ideal copper, want 1.04 to 1.28 (common practice: 6 to 24 %% over)", k, r)
		}
	}
}

func TestWireGrowsWithSize(t *testing.T) {
	c := mustDefault(t)
	for _, spec := range c.Specs() {
		var last Wire
		for _, size := range c.Sizes(spec) {
			w, ok := c.Wire(spec, size)
			if !ok || w.OverMM <= last.OverMM || w.ConductorMM <= last.ConductorMM || last.OhmPerKm != 0 && w.OhmPerKm >= last.OhmPerKm {
				t.Errorf("%s %s does not grow from %s", spec, size, last.Size)
			}
			// Round strands cannot fill more than the circle, and laid ones fill most of it.
			if fill := float64(w.AreaMM2) / (math.Pi / 4 * float64(w.ConductorMM*w.ConductorMM)); fill > 1 || fill < 0.5 {
				t.Errorf("%s %s: copper fills %.2f of its conductor", spec, size, fill)
			}
			last = w
		}
	}
}

func TestContactAgainstPublished(t *testing.T) {
	// source: contact rating table and list of a maker's MIL-DTL-38999 series I/II/III catalogue
	k, ok := mustDefault(t).Contact("22D")
	if !ok || k.MaxA != 5 || k.Pin != "M39029/58-360" || k.Socket != "M39029/56-348" || k.SocketII != "M39029/57-354" ||
		k.SealPlug != "MS27488-22-2" {
		t.Errorf("22D: %+v", k)
	}
	if k.Standing != Published || k.AWGStanding != Published || k.SmallestStanding != Published || k.SealStanding != Published {
		// source: MIL-DTL-38999N with amendment 1, table IV, p. 18
		t.Errorf("22D stands %q %q %q %q", k.Standing, k.AWGStanding, k.SmallestStanding, k.SealStanding)
	}
	// The largest conductor enters the well. Source of the largest bare conductors:
	// a maker's drawing of the AS22759/41 class, table I.
	for size, bare := range map[string]float64{"22M": 0.61, "22D": 0.79, "22": 0.79, "23": 0.79, "20": 0.99, "16": 1.40, "12": 2.26,
		"10": 2.87, "8": 4.39, "4": 6.96, "0": 10.80} {
		k, _ := mustDefault(t).Contact(size)
		if float64(k.WellBoreMM) <= bare {
			t.Errorf("size %s: a conductor of %.2f mm does not enter a well of %.3f mm", size, bare, float64(k.WellBoreMM))
		}
	}
}
