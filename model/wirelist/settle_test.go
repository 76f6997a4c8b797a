package wirelist_test

import (
	"math"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/file"
	"contralay/model/unit"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/value"
)

// in reads a list whose lengths are mm where they do not say.
func in(t *testing.T, name, text string) (model.Harness, string) {
	t.Helper()
	return with(t, name, text, draft.Options{Unit: "mm"})
}

// A length has a tolerance behind it, a word that says how sure it is, or its unit in a
// column of its own; the number is taken, and all of it kept.
func TestLengthsWithMore(t *testing.T) {
	for text, want := range map[string]unit.Millimetre{
		"1200 +50": 1200, "1200mm +50/-0": 1200, "1250 ±10 mm": 1250, "1250 (+50/-0)": 1250, "approx. 900": 900, "ca. 1,2 m": 1200,
		"~900": 900, "900 min": 900, "min. 900 mm": 900, "24-1/2 in": 622.3, "24 1/2 in ±1/4": 622.3, "48 in +1 -0": 1219.2, "900*": 900,
	} {
		list := "Wire\tFrom\tPin\tTo\tPin\tAWG\tLength\n1\tECU\t1\tINJ\t1\t22\t" + text + "\n"
		h, report := in(t, "a.tsv", list)
		if got := h.Branches[0].LengthMM; math.Abs(float64(got-want)) > 0.05 {
			t.Errorf("%q: %v mm, want %v\n%s", text, got, want, report)
		}
		if _, plain := value.ParseLength(text, "mm", value.MarkComma); !plain && !strings.Contains(h.Wires[0].Note.V, text) {
			t.Errorf("%q: the rest is lost: %q", text, h.Wires[0].Note.V)
		}
	}
	for _, text := range []string{"1200-1250", "1200 to 1250", "+50", "see drawing", "900 or so", "1200/1250"} {
		list := "Wire\tFrom\tPin\tTo\tPin\tAWG\tLength\n1\tECU\t1\tINJ\t1\t22\t" + text + "\n"
		h, _ := in(t, "a.tsv", list)
		if h.Branches[0].LengthMM != 1 || !strings.Contains(h.Wires[0].Note.V, text) {
			t.Errorf("%q: %v mm, note %q", text, h.Branches[0].LengthMM, h.Wires[0].Note.V)
		}
	}
}

func TestUnitsInAColumn(t *testing.T) {
	h, report := of(t, "a.csv", "Wire,From,Pin,To,Pin,Size,Unit,Length,UoM,Current,Unit\n"+
		"1,ECU,1,INJ1,1,22,AWG,1.2,m,500,mA\n2,ECU,2,INJ1,2,0.5,mm²,48,in,2,A\n3,ECU,3,INJ2,1,20,AWG,900,mm,3,per line\n")
	text := string(file.Encode(file.Document{Harness: h}))
	for _, want := range []string{`size = "22"`, `size = "0.5mm2"`, "length_mm = 1218.2", "length in the list: 1200 mm",
		"current: 3 per line"} {
		if !strings.Contains(text, want) {
			t.Errorf("no %s in\n%s\n%s", want, text, report)
		}
	}
	if w := h.Wires[0]; w.Amps.V != 0.5 {
		t.Errorf("%+v", w)
	}
}

// Two columns of one kind: the first that is filled counts, the other stays in the note.
// A device and its plug name a connector together where the device has several.
func TestColumnsTwice(t *testing.T) {
	h, report := of(t, "a.csv", "Wire,Circuit,From device,From connector,From pin,Contact,To,Pin,AWG,mm²,Seal\n"+
		"101,C5,ECU,A,1,58-363,INJ1,1,22,0.35,blue\n102,,ECU,B,1,58-363,INJ1,2,,0.5,blue\n")
	if w := h.Wires[0]; w.ID != "101" || w.From.V != "ECU-A:1" || w.Size != "22" || !strings.Contains(w.Note.V, "Circuit: C5") ||
		!strings.Contains(w.Note.V, "Contact: 58-363") || !strings.Contains(w.Note.V, "mm²: 0.35") {
		t.Errorf("%+v\n%s", w, report)
	}
	if w := h.Wires[1]; w.From.V != "ECU-B:1" || w.Size != "0.5mm2" {
		t.Errorf("%+v", w)
	}
	if n := strings.Count(report, "two columns of one kind"); n != 2 {
		t.Errorf("said %d times:\n%s", n, report)
	}
}
