package value_test

import (
	"testing"

	"contralay/model/wirelist/value"
)

func FuzzGauge(f *testing.F) {
	for _, s := range []string{"22", "2x24 AWG " +
		"shielded", "M22759/32-22-9", "0,5", "1/0", "0.35 mm²", "M22759/0 ,1", "FLRY 0.5", "18 TXL", "2x24 M22759/32"} {
		f.Add(s, false)
	}
	f.Fuzz(func(t *testing.T, text string, metric bool) {
		bare := value.BareAWG
		if metric {
			bare = value.BareMM2
		}
		g, ok := value.ParseGauge(text, bare, value.MarkUnknown)
		if !ok {
			return
		}
		again, ok := value.ParseGauge(g.String(), bare, value.MarkPoint)
		if !ok || again.String() != g.String() || again.Size != g.Size || again.Spec != g.Spec {
			t.Fatalf("%q: %+v is printed %q and read %+v, %v", text, g, g.String(), again, ok)
		}
	})
}

func FuzzColour(f *testing.F) {
	for _, s := range []string{"R/W", "Light Blue", "GNYE", "92", "grün/gelb", "hellblau", "bleu clair"} {
		f.Add(s, "de")
	}
	f.Fuzz(func(t *testing.T, text, lang string) {
		c, ok := value.ParseColour(text, lang)
		if !ok {
			return
		}
		again, ok := value.ParseColour(c.String(), "")
		if !ok || !again.Equal(c) {
			t.Fatalf("%q: %v is printed %q and read %v, %v", text, c, c.String(), again, ok)
		}
	})
}

func FuzzLength(f *testing.F) {
	for _, s := range []string{"610mm", "24 1/2 in", "2' 6\"", "0,58 m", "1.250"} {
		f.Add(s, "mm")
	}
	f.Fuzz(func(t *testing.T, text, bare string) {
		mm, ok := value.ParseLength(text, value.LengthUnit(bare), value.MarkUnknown)
		if !ok {
			return
		}
		again, ok := value.ParseLength(value.FormatLength(mm), "", value.MarkUnknown)
		if !ok || again != mm || mm < 0 || mm > 100_000 {
			t.Fatalf("%q: %v is printed %q and read %v, %v", text, mm, value.FormatLength(mm), again, ok)
		}
	})
}
