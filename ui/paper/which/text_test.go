package which

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/query/inserts"
	"contralay/model/catalogue"
)

// The answer as text, by hand: a row for each arrangement, the ways of its wires where it has more than one contact size, seals that do
// not suit; ten of more, and what is not known below.
func TestTextByHand(t *testing.T) {
	wires := inserts.Kind{Says: "22 AWG", Count: 32, OverMM: 1.09}
	small := catalogue.Contact{Size: "22D", SealMinMM: 0.76, SealMaxMM: 1.37}
	published := catalogue.Contact{Size: "20", SealMinMM: 2, SealMaxMM: 3, SealStanding: catalogue.Published}
	fit := inserts.Fit{Insert: catalogue.Insert{ID: "14-35", Aliases: []string{"15-35"}, Shell: 14}, Free: 5,
		Left: []inserts.Left{{Size: "22D", Count: 5}}, Goes: []inserts.Goes{{Kind: wires, Contact: small}},
		Larger: &inserts.Larger{ID: "16-35", More: 18}}
	two := inserts.Fit{Insert: catalogue.Insert{ID: "own", Shell: 1}, Left: []inserts.Left{{Size: "22D"}, {Size: "20"}},
		Goes: []inserts.Goes{{Kind: wires, Contact: small}}, Seals: []inserts.Goes{{Kind: wires, Contact: published}}}
	_, why := fit.Insert.Qualified()
	if why != "" {
		t.Fatalf("14-35 is %s", why)
	}
	const head = "\narrangement    shell  free  left by contact size         next larger shell\n"
	const first = "14-35 (15-35)     14     5  5 of 22D                     16-35 leaves 18 more\n"
	answer := inserts.Answer{Kinds: []inserts.Kind{wires, {Says: "24 AWG", Count: 2, For: inserts.ForDrain}}, Fits: []inserts.Fit{fit, two}}
	want := "What must go in: 32 x 22 AWG, 2 drains of 24 AWG. That is 34.\n" + head + first +
		"own                1     0  none\n" +
		"  32 x 22 AWG in 22D\n" +
		"  ? 32 x 22 AWG, 1.09 mm: outside the seal of size 20, 2.00 to 3.00 mm\n\n"
	if got := Text(answer, false); got != want {
		t.Errorf("%s\nby hand\n%s", got, want)
	}
	answer.Fits[1].Seals[0].Contact = small
	answer.Fits[1].Unseen = []inserts.Goes{{Kind: wires, Contact: published}}
	answer.NotJudged, answer.Contacts = []string{"9-9"}, []string{"23"}
	got := Text(answer, false)
	if !strings.HasSuffix(got,
		"mm~\n\nThe seal of size 20 is not known: whether it suits the wire is not judged.\nNot judged: 9-9. Their contacts 23 are "+
			"in no catalogue.\n~ from memory: check the part's sheet\n") {
		t.Errorf("%s", got)
	}
	answer.Fits[1].Insert.Shell = 0
	if got := Text(answer, false); !strings.Contains(got, "\nown                -     0  none\n") {
		t.Errorf("%s", got)
	}
	if got := Text(inserts.Answer{Kinds: []inserts.Kind{wires}},
		false); got != "What must go in: 32 x 22 AWG. That is 32.\nNo arrangement takes it.\n" {
		t.Errorf("%s", got)
	}
	for n := range 11 { // ten are listed of more, and all where that is asked for
		many := inserts.Answer{Fits: make([]inserts.Fit, n+1)}
		for k := range many.Fits {
			many.Fits[k].Insert.ID = fmt.Sprint("I-", k)
		}
		short, all := Text(many, false), Text(many, true)
		if strings.Count(short, "I-") != min(n+1, 10) || strings.Contains(short, "and 1 more: --full lists all\n") != (n == 10) ||
			strings.Count(all, "I-") != n+1 || strings.Contains(all, "more") {
			t.Errorf("%d arrangements: %s", n+1, short)
		}
	}
	for width, want := range map[int]string{5: "aa bb|cc", 4: "aa|bb|cc", 8: "aa bb cc", 1: "aa|bb|cc"} {
		if got := strings.Join(wrapped(" aa bb  cc ", width), "|"); got != want {
			t.Errorf("%d wide: %q, by hand %q", width, got, want)
		}
	}
	if got := wrapped("", 5); got != nil {
		t.Errorf("%q", got)
	}
	long := Text(inserts.Answer{Kinds: []inserts.Kind{{Says: strings.Repeat("word ", 30), Count: 1}}}, false)
	for _, line := range strings.Split(long, "\n")[:2] {
		if len(line) > 80 || len(line) < 70 {
			t.Errorf("%d: %q", len(line), line)
		}
	}
	if !strings.Contains(long, "\n  word word") {
		t.Errorf("%s", long)
	}
}

// The answer as JSON, by hand: null of what has no value, and lists that are never null.
func TestJSONByHand(t *testing.T) {
	squeeze := func(a inserts.Answer) string {
		text, err := JSON(a)
		if err != nil || text[len(text)-1] != '\n' {
			t.Fatalf("%v %q", err, text)
		}
		return strings.Join(strings.Fields(string(text)), "")
	}
	if got := squeeze(inserts.Answer{}); got != `{"asked":[],"fits":[],"none":[],"nearest":null,"not_judged":[]}` {
		t.Errorf("%s", got)
	}
	wires, drain := inserts.Kind{Says: "22", Count: 32, OverMM: 0.5}, inserts.Kind{Says: "24", Count: 1, For: inserts.ForDrain}
	contact := catalogue.Contact{Size: "20", SealMinMM: 2, SealMaxMM: 3, SealStanding: catalogue.Published}
	w, d := `{"wire":"22","for":"wire","count":32,"over_mm":0.5`, `{"wire":"24","for":"drain","count":1,"over_mm":null`
	got := squeeze(inserts.Answer{Kinds: []inserts.Kind{wires, drain}, None: []inserts.Refused{{Kind: drain}},
		Nearest: &inserts.Near{Insert: catalogue.Insert{ID: "n"}, Lacks: []inserts.Kind{wires}}, NotJudged: []string{"9-9"},
		Fits: []inserts.Fit{{Insert: catalogue.Insert{ID: "a", Aliases: []string{"b"}, Shell: 1}, Free: 5,
			Left: []inserts.Left{{Size: "20", Count: 5}}, Goes: []inserts.Goes{{Kind: wires, Contact: contact}},
			Seals: []inserts.Goes{{Kind: drain, Contact: contact}, {Kind: wires, Contact: contact}}, Unseen: []inserts.Goes{{Kind: drain,
				Contact: contact}}, Larger: &inserts.Larger{ID: "c", More: 2}}, {Insert: catalogue.Insert{ID: "x"}}}})
	c, seal := `,"contact":"20"}`, `,"contact":"20","min_mm":2,"max_mm":3,"standing":"published"}`
	qualified := func(id string) string {
		all, _ := catalogue.Insert{ID: id}.Qualified()
		return fmt.Sprint(all)
	}
	if want := `{"asked":[` + w + `},` + d + `}],"fits":[{"id":"a","aliases":["b"],"shell":1,"free":5,"left":[{"size":"20",` +
		`"count":5}],"goes":[` + w + c + `],"seals":[` + d + seal + `,` + w + seal + `],"seal_unknown":[` + d + c +
		`],"qualified":` + qualified("a") + `,"larger":{"id":"c","more":2}},{"id":"x","aliases":[],"shell":null,"free":0,"left":[],` +
		`"goes":[],"seals":[],"seal_unknown":[],"qualified":` + qualified("x") +
		`,"larger":null}],"none":[` + d + `}],"nearest":{"id":"n","lacks":[` + w + `}]},"not_judged":["9-9"]}`; got != want {
		t.Errorf("%s, by hand\n%s", got, want)
	}
}
