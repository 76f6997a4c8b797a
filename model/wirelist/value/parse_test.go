package value_test

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"contralay/model/unit"
	"contralay/model/wirelist/value"
)

func TestParseGauge(t *testing.T) {
	for _, c := range []struct {
		text string
		bare value.Bare
		want value.Gauge
	}{
		{"22", value.BareAWG, value.Gauge{Size: "22"}},
		{"22 AWG", value.BareMM2, value.Gauge{Size: "22"}},
		{"AWG22", value.BareAWG, value.Gauge{Size: "22"}},
		{"awg 22", value.BareAWG, value.Gauge{Size: "22"}},
		{"22ga", value.BareAWG, value.Gauge{Size: "22"}},
		{"22 ga.", value.BareAWG, value.Gauge{Size: "22"}},
		{"#22", value.BareAWG, value.Gauge{Size: "22"}},
		{"1/0", value.BareAWG, value.Gauge{Size: "1/0"}},
		{"00", value.BareAWG, value.Gauge{Size: "2/0"}},
		{"0.5mm²", value.BareAWG, value.Gauge{Size: "0.5mm2"}},
		{"0,5", value.BareAWG, value.Gauge{Size: "0.5mm2"}},
		{".5", value.BareAWG, value.Gauge{Size: "0.5mm2"}},
		{"0.50 mm2", value.BareAWG, value.Gauge{Size: "0.5mm2"}},
		{"0.35 mm^2", value.BareAWG, value.Gauge{Size: "0.35mm2"}},
		{"2,5 qmm", value.BareAWG, value.Gauge{Size: "2.5mm2"}},
		{"1", value.BareMM2, value.Gauge{Size: "1mm2"}},
		{"2x24 AWG shielded", value.BareAWG, value.Gauge{Size: "24", Conductors: 2, Shielded: true}},
		{"2 x 0,35 mm² geschirmt verdrillt", value.BareAWG, value.Gauge{Size: "0.35mm2", Conductors: 2, Shielded: true, Twisted: true}},
		{"3C 24 shielded", value.BareAWG, value.Gauge{Size: "24", Conductors: 3, Shielded: true}},
		{"2 core 20", value.BareAWG, value.Gauge{Size: "20", Conductors: 2}},
		{"24 AWG TSP", value.BareAWG, value.Gauge{Size: "24", Conductors: 2, Shielded: true, Twisted: true}},
		{"twisted pair", value.BareAWG, value.Gauge{Conductors: 2, Twisted: true}},
		{"M22759/32-22-9", value.BareAWG, value.Gauge{Spec: "AS22759/32", Size: "22", Colour: value.Colour{{Of: 9}}}},
		{"AS22759/16-01-20", value.BareAWG, value.Gauge{Spec: "AS22759/16", Size: "1/0", Colour: value.Colour{{Of: 2}, {Of: 0}}}},
		{"22759/32", value.BareAWG, value.Gauge{Spec: "AS22759/32"}},
	} {
		got, ok := value.ParseGauge(c.text, c.bare, value.MarkUnknown)
		if !ok || got.String() != c.want.String() || got.Size != c.want.Size || got.Spec != c.want.Spec ||
			!got.Colour.Equal(c.want.Colour) ||
			got.Conductors != c.want.Conductors || got.Shielded != c.want.Shielded || got.Twisted != c.want.Twisted {
			t.Errorf("%q: %+v, %v; want %+v", c.text, got, ok, c.want)
		}
	}
	for _, text := range []string{"", "red", "99", "0", "0.0", "22 or 20", "22 20", "22 AWG mm²", "-22", "121 mm²", "AWG", "22 mm",
		"M22759/32-22-9x", "M22759/-22", "5/0", "1e3"} {
		if got, ok := value.ParseGauge(text, value.BareAWG, value.MarkUnknown); ok {
			t.Errorf("%q is read as %+v", text, got)
		}
	}
}

func TestParseColour(t *testing.T) {
	for _, c := range []struct{ text, lang, want string }{
		{"red", "", "red"},
		{"R/W", "", "red/white"},
		{"R/BK", "", "red/black"},
		{"white/blue", "", "white/blue"},
		{"Red w/ White", "", "red/white"},
		{"red with white stripe", "", "red/white"},
		{"Light Blue", "", "light blue"},
		{"Lt Blue/ Black", "", "light blue/black"},
		{"Red/Light Blue", "", "red/light blue"},
		{"GNYE", "", "green/yellow"},
		{"WHRD", "", "white/red"},
		{"BU", "", "blue"},
		{"6", "", "blue"},
		{"92", "", "white/red"},
		{"9/2", "", "white/red"},
		{"901", "", "white/black/brown"},
		{"grün", "", "green"},
		{"GRÜN-GELB", "", "green/yellow"},
		{"hellblau", "", "light blue"},
		{"gr", "de", "grey"},
		{"br/ge", "de", "brown/yellow"},
		{"bleu clair", "fr", "light blue"},
		{"or", "fr", "gold"},
		{"or", "", "orange"},
		{"verde oscuro", "es", "dark green"},
		{"azzurro", "it", "light blue"},
		{"rosso/nero", "it", "red/black"},
		{"blanc / rouge", "", "white/red"},
		{"gnws", "de", "green/white"},
		{"swrt", "de", "black/red"},
		{"sky blue", "", "light blue"},
		{"navy", "", "dark blue"},
		{"bleu ciel/noir", "fr", "light blue/black"},
		{"azul celeste", "es", "light blue"},
		{"azul marinho", "pt", "dark blue"},
		{"azul-escuro/preto", "pt", "dark blue/black"},
		{"himmelblau", "de", "light blue"},
		{"lyserød", "da", "pink"},
		{"lyseblå", "da", "light blue"},
		{"mørkeblå", "", "dark blue"},
		{"vaaleanpunainen", "fi", "pink"},
		{"vaaleansininen", "fi", "light blue"},
		{"narancssárga", "hu", "orange"},
		{"zöldsárga", "hu", "green/yellow"},
		{"világoskék", "hu", "light blue"},
		{"rózsaszín", "hu", "pink"},
		{"pembe", "tr", "pink"},
		{"açık mavi", "tr", "light blue"},
		{"lacivert", "tr", "dark blue"},
		{"błękitny", "pl", "light blue"},
		{"czerwone", "pl", "red"},
		{"žlutozelená", "cs", "yellow/green"},
		{"světle modrá", "cs", "light blue"},
		{"keltavihreä", "fi", "yellow/green"},
		{"fiolett", "no", "violet"},
		{"rött", "sv", "red"},
		{"cor-de-rosa", "pt", "pink"},
		{"cor de laranja/preto", "pt", "orange/black"},
		{"roz/mov", "ro", "pink/violet"},
	} {
		got, ok := value.ParseColour(c.text, c.lang)
		if !ok || got.String() != c.want {
			t.Errorf("%q: %q, %v; want %q", c.text, got, ok, c.want)
		}
	}
	// Read in two ways, or in none.
	for _, text := range []string{"", "???", "Bare", "B", "BL", "BR", "GR", "gr", "red/", "/red", "red//white", "light",
		"red stripe white black green yellow", "22 AWG",
		"2 core brown", "GND", "reserved", "-5", "9-", "12345", "RDBUWHGNYE", "red or blue 2", "w/ white", "22", "red/red"} {
		if got, ok := value.ParseColour(text, ""); ok {
			t.Errorf("%q is read as %q", text, got)
		}
	}
}

func TestParseLength(t *testing.T) {
	for _, c := range []struct {
		text string
		bare value.LengthUnit
		mark value.Mark
		want unit.Millimetre // exact: each is a decimal of few figures
	}{
		{"610mm", "", value.MarkUnknown, 610},
		{"24 in", "", value.MarkUnknown, 609.6},
		{`24"`, "", value.MarkUnknown, 609.6},
		{"24 in.", "", value.MarkUnknown, 609.6},
		{"24 1/2 in", "", value.MarkUnknown, 622.3},
		{`24-1/2"`, "", value.MarkUnknown, 622.3},
		{"2' 6\"", "", value.MarkUnknown, 762},
		{"2 ft 6 in", "", value.MarkUnknown, 762},
		{"0.58 m", "", value.MarkUnknown, 580},
		{"1,35", "m", value.MarkUnknown, 1350},
		{"45 cm", "mm", value.MarkUnknown, 450},
		{"720", "mm", value.MarkUnknown, 720},
		{"1.250", "mm", value.MarkComma, 1250},
		{"1,250", "mm", value.MarkPoint, 1250},
		{"1,250", "m", value.MarkComma, 1250},
		{"1.250", "m", value.MarkPoint, 1250},
		{"1.250,5", "mm", value.MarkUnknown, 1250.5},
		{"1,250.5", "mm", value.MarkUnknown, 1250.5},
		{"1,250 mm", "", value.MarkUnknown, 1250}, // no wire is 1.25 mm long
		{"1,250", "mm", value.MarkUnknown, 1250},
		{"0", "mm", value.MarkUnknown, 0},
	} {
		got, ok := value.ParseLength(c.text, c.bare, c.mark)
		if !ok || math.Abs(float64(got-c.want)) > 1e-9 {
			t.Errorf("%q: %v, %v; want %v", c.text, got, ok, c.want)
		}
	}
	for _, text := range []string{"", "720", "?", "1,250 m", "120,500 mm", "1,25 0 mm", "-5 mm", "ca. 600 mm", "600 mm + 50 mm",
		"6 in 2 ft", "2 ft 6", "1e3 mm", "600 mm x", "101 m", "12..5 mm", "600-700 mm"} {
		if got, ok := value.ParseLength(text, "", value.MarkUnknown); ok {
			t.Errorf("%q is read as %v", text, got)
		}
	}
}

func TestParseCurrent(t *testing.T) {
	for _, c := range []struct {
		text  string
		milli bool
		want  unit.Ampere
	}{{"1.0A", false, 1}, {"1.0 A", false, 1}, {"20 mA", false, 0.02}, {"0,02", false, 0.02}, {"5 amps", false, 5}, {"20", true, 0.02},
		{"2 A", true, 2}} {
		if got, ok := value.ParseCurrent(c.text, c.milli, value.MarkUnknown); !ok || math.Abs(float64(got-c.want)) > 1e-12 {
			t.Errorf("%q: %v, %v; want %v", c.text, got, ok, c.want)
		}
	}
	for _, text := range []string{"", "A", "5 V", "-1 A", "1 A 2 A", "5000 A", "NaN", "10 A max"} {
		if got, ok := value.ParseCurrent(text, false, value.MarkUnknown); ok {
			t.Errorf("%q is read as %v", text, got)
		}
	}
}

// What is printed is read as the same.
func TestPrintedIsRead(t *testing.T) {
	hue := rapid.Custom(func(t *rapid.T) value.Hue {
		return value.Hue{Of: rapid.IntRange(0, 25).Draw(t, "of"), Shade: rapid.SampledFrom([]string{"", "light", "dark"}).Draw(t, "shade")}
	})
	rapid.Check(t, func(t *rapid.T) {
		c := value.Colour(rapid.SliceOfN(hue, 1, 4).Draw(t, "colour"))
		c = slices.CompactFunc(c, func(a, b value.Hue) bool { return a.Of == b.Of }) // a stripe is of another colour
		if got, ok := value.ParseColour(c.String(), ""); !ok || !got.Equal(c) {
			t.Fatalf("%q: %v, %v; want %v", c, got, ok, c)
		}
		plain := value.Colour{}
		for _, h := range c {
			plain = append(plain, value.Hue{Of: h.Of})
		}
		for _, code := range []func() (string, bool){c.Letters, c.Digits} {
			if text, has := code(); has {
				if got, ok := value.ParseColour(text, ""); !ok || !got.Equal(plain) {
					t.Fatalf("%q of %q: %v, %v", text, c, got, ok)
				}
			}
		}
		mm := unit.Millimetre(rapid.Float64Range(0, 100_000).Draw(t, "mm"))
		if got, ok := value.ParseLength(value.FormatLength(mm), "", value.MarkUnknown); !ok || got != mm {
			t.Fatalf("%v: %q is %v, %v", float64(mm), value.FormatLength(mm), got, ok)
		}
		a := unit.Ampere(rapid.Float64Range(0, 2000).Draw(t, "a"))
		if got, ok := value.ParseCurrent(value.FormatCurrent(a), false, value.MarkUnknown); !ok || got != a {
			t.Fatalf("%v: %q is %v, %v", float64(a), value.FormatCurrent(a), got, ok)
		}
		g := value.Gauge{Size: rapid.SampledFrom([]string{"22", "8", "1/0", "4/0", "0.5mm2", "2.5mm2", "120mm2"}).Draw(t, "size"),
			Conductors: rapid.SampledFrom([]int{0, 2, 3, 4, 12}).Draw(t, "conductors"), Shielded: rapid.Bool().Draw(t, "shielded"),
			Twisted: rapid.Bool().Draw(t, "twisted")}
		got, ok := value.ParseGauge(g.String(), rapid.SampledFrom([]value.Bare{value.BareAWG, value.BareMM2}).Draw(t, "bare"),
			value.MarkUnknown)
		if !ok || got.String() != g.String() || got.Size != g.Size || got.Conductors != g.Conductors {
			t.Fatalf("%q: %+v, %v; want %+v", g, got, ok, g)
		}
	})
}

// ² alone is mm², and "red or blue" is no colour.
func TestMarksOfSizesAndColours(t *testing.T) {
	for text, want := range map[string]string{"0,35²": "0.35mm2", "0.75 ²": "0.75mm2", "0.5mm²": "0.5mm2", "22 AWG": "22"} {
		if g, ok := value.ParseGauge(text, value.BareAWG, value.MarkUnknown); !ok || g.Size != want {
			t.Errorf("%q: %v %+v", text, ok, g)
		}
	}
	if c, ok := value.ParseColour("red or blue", "en"); ok {
		t.Errorf("red or blue is %v", c)
	}
	if _, ok := value.ParseColour("red/blue", "en"); !ok {
		t.Error("red/blue is no colour")
	}
}

// A specification beside a size, of one wire or of a cable, is printed so that it is read as the
// same, whatever sheet and unit stand together in a cell.
func TestGaugeWithSpecIsReadBack(t *testing.T) {
	for _, c := range []struct{ cell, prints string }{
		{"M22759/32-22-9", "AS22759/32-22-9"},
		{"M22759/0 ,1", "AS22759/0 0.1 mm²"},
		{"M22759/32 0.5mm²", "AS22759/32 0.5 mm²"},
		{"2x24 M22759/32", "AS22759/32 2 x 24 AWG"},
		{"M22759/32 24 AWG shielded", "AS22759/32 24 AWG shielded"},
		{"FLRY 0.5", "ISO 6722 thin 0.5 mm²"},
		{"18 TXL", "SAE J1128 TXL 18 AWG"},
		{"ISO 6722 thin", "ISO 6722 thin"},
	} {
		g, ok := value.ParseGauge(c.cell, value.BareAWG, value.MarkUnknown)
		if !ok || g.String() != c.prints {
			t.Errorf("%q is printed %q (%v), want %q", c.cell, g, ok, c.prints)
			continue
		}
		again, ok := value.ParseGauge(g.String(), value.BareAWG, value.MarkPoint)
		if !ok || again.Spec != g.Spec || again.Size != g.Size || again.Conductors != g.Conductors || again.Shielded != g.Shielded {
			t.Errorf("%q: %+v is read back as %+v, %v", c.cell, g, again, ok)
		}
	}
}
