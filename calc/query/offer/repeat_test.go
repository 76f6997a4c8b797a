package offer_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/offer"
	"contralay/model"
)

// twoBanks is a plug, two rails and two like legs on each; only the first rail's
// first leg is wired, with a crank pair beside it.
const twoBanks = `format = 1
[[termination]]
id = "P1"
cavities = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12"]
[[termination]]
id = "INJ1"
cavities = ["1", "2"]
[[termination]]
id = "INJ2"
cavities = ["1", "2"]
[[termination]]
id = "INJ3"
cavities = ["1", "2"]
[[termination]]
id = "INJ4"
cavities = ["1", "2"]
[[termination]]
id = "OIL"
cavities = ["A", "B"]
[[breakout]]
id = "J1"
[[breakout]]
id = "JL"
[[breakout]]
id = "JR"
[[splice]]
id = "SL"
at = "JL"
[[splice]]
id = "SR"
at = "JR"
[[wire]]
id = "101"
signal = "Injector 1 switched"
from = "P1:1"
to = "INJ1:1"
spec = "AS22759/32"
size = "22"
[[wire]]
id = "110"
signal = "Feed left"
from = "P1:2"
to = "SL"
spec = "AS22759/32"
size = "20"
[[wire]]
id = "111"
signal = "Injector 1 feed"
from = "SL"
to = "INJ1:2"
spec = "AS22759/32"
size = "22"
return = "101"
[[branch]]
id = "T1"
from = "P1"
to = "J1"
length_mm = 300
[[branch]]
id = "RL"
from = "J1"
to = "JL"
length_mm = 200
[[branch]]
id = "RR"
from = "J1"
to = "JR"
length_mm = 200
[[branch]]
id = "L1"
from = "JL"
to = "INJ1"
length_mm = 90
[[branch]]
id = "L2"
from = "JL"
to = "INJ2"
length_mm = 90
[[branch]]
id = "L3"
from = "JR"
to = "INJ3"
length_mm = 90
[[branch]]
id = "L4"
from = "JR"
to = "INJ4"
length_mm = 90
[[branch]]
id = "L5"
from = "J1"
to = "OIL"
length_mm = 90
`

func wireSays(w *model.Wire) string {
	return fmt.Sprintf("%s %q %s %s %s", w.ID, w.Signal.V, w.From.V, w.To.V, w.Return.V)
}

func TestRepeatedToLikeEnds(t *testing.T) {
	s := calctest.Built(t, twoBanks)
	one := s.Index.Termination["INJ1"]
	var like []string
	for _, k := range offer.Like(s, one) {
		like = append(like, s.H.Terminations[k].ID)
	}
	if !slices.Equal(like, []string{"INJ2", "INJ3", "INJ4"}) {
		t.Fatalf("like INJ1: %v; OIL has other cavities, and INJ1 is wired", like)
	}
	h, ids, err := offer.Repeated(s, one, s.Index.Termination["INJ2"])
	if err != nil {
		t.Fatal(err)
	}
	if !slices.Equal(ids, []string{"102", "112"}) {
		t.Fatalf("new wires %v", ids)
	}
	x := model.NewIndex(h)
	for id, want := range map[string]string{
		"102": `102 "Injector 2 switched" P1:3 INJ2:1 `,
		"112": `112 "Injector 2 feed" SL INJ2:2 102`,
	} {
		if got := wireSays(&h.Wires[x.Wire[id]]); got != want {
			t.Errorf("%s, want %s", got, want)
		}
	}
	// No way leads from the left splice to the right bank but through the trunk: the
	// path exists, and so the wire is made; a termination that nothing leads to is refused.
	if _, _, err := offer.Repeated(calctest.Built(t,
		strings.Replace(twoBanks, "id = \"L4\"\nfrom = \"JR\"\nto = \"INJ4\"", "id = \"L4\"\nfrom = \"JR\"\nto = \"OIL2\"", 1)+
			"[[termination]]\nid = \"OIL2\"\ncavities = [\"A\"]\n"), one, 4); err == nil || !strings.Contains(err.Error(),
		"no branch leads") {
		t.Errorf("to a place that nothing leads to: %v", err)
	}
}

func TestMirroredBank(t *testing.T) {
	s := calctest.Built(t, twoBanks)
	left, right := s.Index.Branch["RL"], s.Index.Branch["RR"]
	if got := offer.LikeBanks(s, right); !slices.Equal(got, []int{left}) {
		t.Fatalf("banks like RR's: %v", got)
	}
	if got := offer.LikeBanks(s, left); len(got) != 0 {
		t.Errorf("RL is wired already: %v", got)
	}
	h, ids, err := offer.Mirrored(s, left, right)
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	x := model.NewIndex(h)
	for _, id := range ids {
		got = append(got, wireSays(&h.Wires[x.Wire[id]]))
	}
	want := []string{`102 "Injector 3 switched" P1:3 INJ3:1 `, `112 "Feed left" P1:4 SR `, `113 "Injector 3 feed" SR INJ3:2 102`}
	if !slices.Equal(got, want) {
		t.Errorf("%q\nwant %q", got, want)
	}
	// A plug without room refuses, and changes nothing.
	small := calctest.Built(t, strings.Replace(twoBanks, `"1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12"`, `"1", "2", "3"`,
		1))
	if same, _, err := offer.Mirrored(small, left, right); err == nil || same != small.H ||
		!strings.Contains(err.Error(), "P1 has no free cavity") {
		t.Errorf("%v", err)
	}
}

// A repeated unit is a unit, and its layers hold it where the others are laid.
func TestRepeatedUnit(t *testing.T) {
	s := calctest.Built(t, twoBanks+"[[unit]]\nid = \"C1\"\nwires = [\"101\", \"113\"]\nbuild = \"pair\"\n[[wire]]\nid = \"113\"\nfrom = "+
		"\"P1:5\"\nto = \"INJ1:2\"\nspec = \"AS22759/32\"\nsize = \"22\"\n")
	_, _, err := offer.Repeated(s, s.Index.Termination["INJ1"], s.Index.Termination["INJ2"])
	if err != nil {
		t.Fatal(err)
	}
	h, _, _ := offer.Repeated(s, s.Index.Termination["INJ1"], s.Index.Termination["INJ2"])
	if n := len(h.Units); n != 2 || len(h.Units[1].Wires) != 2 || h.Units[1].ID == "C1" {
		t.Errorf("units %+v", h.Units)
	}
}

func TestLaidLike(t *testing.T) {
	s := calctest.Built(t, strings.ReplaceAll(`format = 1
[[termination]]
id = "A"
cavities = ["1","2","3","4","5","6","7","8","9","10","11","12","13","14","15","16"]
[[termination]]
id = "B"
cavities = ["1","2","3","4","5","6","7","8"]
[[termination]]
id = "C"
cavities = ["1","2","3","4","5","6","7","8"]
[[breakout]]
id = "J"
WIRES
[[branch]]
id = "T"
from = "A"
to = "J"
length_mm = 300
[[branch]]
id = "X"
from = "J"
to = "B"
length_mm = 300
  [[branch.layer]]
  of = ["w1"]
  [[branch.layer]]
  of = ["w2", "w3", "w4", "w5", "w6", "w7", "w8"]
  fillers = 1
[[branch]]
id = "Y"
from = "J"
to = "C"
length_mm = 200
`, "WIRES", func() string {
		var b strings.Builder
		for i := range 16 {
			to := fmt.Sprintf("B:%d", i+1)
			if i >= 8 {
				to = fmt.Sprintf("C:%d", i-7)
			}
			size := "22"
			if i%8 == 0 {
				size = "20"
			}
			fmt.Fprintf(&b, "[[wire]]\nid = \"w%d\"\nfrom = \"A:%d\"\nto = %q\nspec = \"AS22759/32\"\nsize = %q\n", i+1, i+1, to, size)
		}
		return b.String()
	}()))
	x, y := s.Index.Branch["X"], s.Index.Branch["Y"]
	ls, ok := offer.LaidLike(s, x, y)
	if !ok || len(ls) != 2 || !slices.Equal(ls[0].Of, []string{"w9"}) || len(ls[1].Of) != 7 || ls[1].Fillers.V != 1 {
		t.Errorf("%v %+v", ok, ls)
	}
	if _, ok := offer.LaidLike(s, x, s.Index.Branch["T"]); ok {
		t.Error("the trunk holds others")
	}
}

// A spare of a leg that is capped at a breakout is repeated with it, and capped at the same
// place; the other end takes the like cavity.
func TestRepeatedWithACappedSpare(t *testing.T) {
	text := strings.NewReplacer("id = \"INJ1\"\ncavities = [\"1\", \"2\"]", "id = \"INJ1\"\ncavities = [\"1\", \"2\", \"3\"]",
		"id = \"INJ2\"\ncavities = [\"1\", \"2\"]", "id = \"INJ2\"\ncavities = [\"1\", \"2\", \"3\"]").Replace(twoBanks) +
		"[[wire]]\nid = \"121\"\nfrom = \"INJ1:3\"\ncapped_at = \"J1\"\nspec = \"AS22759/32\"\nsize = \"22\"\nrole = \"spare\"\n"
	s := calctest.Built(t, text)
	h, ids, err := offer.Repeated(s, s.Index.Termination["INJ1"], s.Index.Termination["INJ2"])
	if err != nil || len(ids) != 3 {
		t.Fatalf("%v, %v", ids, err)
	}
	w := h.Wires[model.NewIndex(h).Wire["122"]]
	if w.From.V != "INJ2:3" || w.To.Set || w.CappedAt.V != "J1" {
		t.Errorf("%+v", w)
	}
}

// A spare of a bank that is capped inside it is capped at the like breakout of the other
// bank, not back in its own.
func TestMirroredWithACappedSpare(t *testing.T) {
	text := twoBanks
	for _, id := range []string{"INJ1", "INJ2", "INJ3", "INJ4"} {
		text = strings.Replace(text, "id = \""+id+"\"\ncavities = [\"1\", \"2\"]", "id = \""+id+"\"\ncavities = [\"1\", \"2\", \"3\"]", 1)
	}
	text += "[[wire]]\nid = \"121\"\nfrom = \"INJ1:3\"\ncapped_at = \"JL\"\nspec = \"AS22759/32\"\nsize = \"22\"\nrole = \"spare\"\n"
	s := calctest.Built(t, text)
	h, ids, err := offer.Mirrored(s, s.Index.Branch["RL"], s.Index.Branch["RR"])
	if err != nil {
		t.Fatal(err)
	}
	w := h.Wires[model.NewIndex(h).Wire["122"]]
	if !slices.Contains(ids, "122") || w.From.V != "INJ3:3" || w.CappedAt.V != "JR" {
		t.Errorf("%v: %+v", ids, w)
	}
}
