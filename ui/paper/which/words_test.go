package which

import (
	"strings"
	"testing"

	"contralay/calc/query/inserts"
	"contralay/model/catalogue"
)

// Everything that is said of arrangements, by hand.
func TestWordsOfAnAnswer(t *testing.T) {
	wires := inserts.Kind{Says: "22 AWG", Count: 32, OverMM: 1.09}
	drain, drains := inserts.Kind{Says: "24 AWG", Count: 1, For: inserts.ForDrain}, inserts.Kind{Says: "24 AWG", Count: 3,
		For: inserts.ForDrain}
	spare, spares := inserts.Kind{Says: "22 AWG", Count: 1, For: inserts.ForSpare}, inserts.Kind{Says: "22 AWG", Count: 2,
		For: inserts.ForSpare}
	small := catalogue.Contact{Size: "22D", SealMinMM: 0.76, SealMaxMM: 1.37}
	large := catalogue.Contact{Size: "12", SealMinMM: 2.5, SealMaxMM: 4, SealStanding: catalogue.Published}
	memory := catalogue.Contact{Size: "8", SealMinMM: 5, SealMaxMM: 6, SealStanding: catalogue.Memory}
	fit := inserts.Fit{Left: []inserts.Left{{Size: "22D", Count: 5}, {Size: "20", Count: 0}, {Size: "12", Count: 2}},
		Goes:   []inserts.Goes{{Kind: wires, Contact: small}, {Kind: drain, Contact: large}},
		Seals:  []inserts.Goes{{Kind: wires, Contact: small}, {Kind: wires, Contact: large}, {Kind: wires, Contact: memory}},
		Unseen: []inserts.Goes{{Kind: wires, Contact: small}, {Kind: wires, Contact: large}, {Kind: drain, Contact: small}},
		Larger: &inserts.Larger{ID: "16-35", More: 18}}
	said := func(a inserts.Answer) string { return strings.Join(Said(a), " / ") }
	refused := func(r inserts.Refused) inserts.Answer { return inserts.Answer{None: []inserts.Refused{r}} }
	over, unread := inserts.Kind{Says: "2.9 mm", ByOver: true, OverMM: 2.9}, inserts.Kind{Says: "own 22", Unread: true}
	for _, c := range [][2]string{
		{Counted(wires), "32 x 22 AWG"}, {Counted(drain), "1 drain of 24 AWG"}, {Counted(drains), "3 drains of 24 AWG"},
		{Counted(spare), "1 spare of 22 AWG"}, {Counted(spares), "2 spares of 22 AWG"},
		{Kinds([]inserts.Kind{wires, drain}), "32 x 22 AWG, 1 drain of 24 AWG"}, {Kinds(nil), ""},
		{Left(fit), "5 of 22D, 2 of 12"}, {Left(inserts.Fit{Left: []inserts.Left{{Size: "20"}}}), "none"}, {Left(inserts.Fit{}), "none"},
		{Goes(fit), "32 x 22 AWG in 22D, 1 drain of 24 AWG in 12"}, {Larger(fit), "16-35 leaves 18 more"}, {Larger(inserts.Fit{}), ""},
		{strings.Join(Seals(fit), "; "), "32 x 22 AWG, 1.09 mm: outside the seal of size 22D, 0.76 to 1.37 mm~; 32 x 22 AWG, 1.09 mm: " +
			"outside the " +
			"seal of size 12, 2.50 to 4.00 mm; 32 x 22 AWG, 1.09 mm: outside the seal of size 8, 5.00 to 6.00 mm~"},
		{said(inserts.Answer{}), "No arrangement takes it."},
		{said(inserts.Answer{Fits: []inserts.Fit{{}}}), ""},
		{said(inserts.Answer{Fits: []inserts.Fit{{}}, Kinds: []inserts.Kind{over, wires, unread, over}}),
			"The gauge of 2.9 mm is not given: only the seal is judged. / own 22 is in no catalogue: whether a contact takes it is " +
				"not judged."},
		{said(refused(inserts.Refused{Kind: wires})), "No contact takes 22 AWG: no seal takes it."},
		{said(refused(inserts.Refused{Kind: wires, Thick: true, Thin: true})),
			"No contact takes 22 AWG: it is too thick for every barrel."},
		{said(refused(inserts.Refused{Kind: wires, Thin: true})), "No contact takes 22 AWG: it is too thin for every barrel."},
		{said(refused(inserts.Refused{Kind: inserts.Kind{Says: "a wire", ByOver: true}})),
			"No contact takes a wire: neither its gauge nor its diameter is known."},
		{said(refused(inserts.Refused{Kind: over})), "No contact takes 2.9 mm: no seal takes it."},
		{said(inserts.Answer{Nearest: &inserts.Near{Insert: catalogue.Insert{ID: "14-35"}, Lacks: []inserts.Kind{spares}}}),
			"No arrangement takes all of it. Nearest is 14-35: it has no place for 2 spares of 22 AWG."},
		{NotJudged(inserts.Answer{}), ""},
		{NotJudged(inserts.Answer{NotJudged: []string{"9-9", "8-8"}, Contacts: []string{"23", "24"}}),
			"Not judged: 9-9, 8-8. Their contacts 23, 24 are in no catalogue."},
		{Unseen(nil), ""}, {Unseen([]inserts.Fit{{}, fit, fit}), "The seal of size 22D, 12 is not known: whether it suits the wire is " +
			"not judged."},
		{Names(catalogue.Insert{ID: "14-35"}), "14-35"}, {Names(catalogue.Insert{ID: "14-35", Aliases: []string{"15-35", "x"}}),
			"14-35 (15-35, x)"},
	} {
		if c[0] != c[1] {
			t.Errorf("%q, want %q", c[0], c[1])
		}
	}
}
