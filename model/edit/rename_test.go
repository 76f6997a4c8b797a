package edit_test

import (
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"contralay/model"
	"contralay/model/edit"
	"contralay/model/file"
)

func everyKey(t *testing.T) *model.Harness {
	t.Helper()
	d, err := file.Load("../../testdata/every-key.toml")
	if err != nil {
		t.Fatal(err)
	}
	return &d.Harness
}

// In the file of every key each thing is renamed, and the text of the file is searched for what
// names it: outside the records of builds the old id is nowhere, the new one as often as the old
// one was. The search knows nothing of the table that the rename goes by.
func TestRenameEverywhere(t *testing.T) {
	h := everyKey(t)
	outside := func(h *model.Harness) string {
		n := *h
		n.Builds = nil
		return text(&n)
	}
	for _, noun := range edit.Nouns {
		if len(edit.IDs(h, noun)) == 0 {
			t.Errorf("the file of every key has no %s", noun)
		}
		for _, id := range edit.IDs(h, noun) {
			before := text(h)
			n, _, err := edit.Rename(h, noun, id, "new name")
			if err != nil {
				t.Fatal(err)
			}
			kept(t, h, before, n)
			names := func(id string) *regexp.Regexp { return regexp.MustCompile(`"` + regexp.QuoteMeta(id) + `[":]`) }
			old, now := names(id), names("new name")
			if noun == edit.Splice { // no cavity stands behind it
				old, now = regexp.MustCompile(`"`+id+`"`), regexp.MustCompile(`"new name"`)
			}
			if got := old.FindAllString(outside(n), -1); len(got) > 0 {
				t.Errorf("%s %s is still named %d times", noun, id, len(got))
			}
			was, is := len(old.FindAllString(outside(h), -1)), len(now.FindAllString(outside(n), -1))
			if was != is || was == 0 {
				t.Errorf("%s %s was named %d times, the new name %d", noun, id, was, is)
			}
			if len(edit.References(h, noun, id)) != was-1 {
				t.Errorf("%s %s: %d references, the file has %d", noun, id, len(edit.References(h, noun, id)), was-1)
			}
			back, _, err := edit.Rename(n, noun, "new name", id)
			if err != nil || text(back) != before {
				t.Errorf("%s %s: renamed back it is not what it was: %v", noun, id, err)
			}
			if !reflect.DeepEqual(n.Builds, h.Builds) {
				t.Errorf("%s %s: a record of a build changed", noun, id)
			}
		}
	}
}

func TestRenameRefuses(t *testing.T) {
	h := loom()
	h.Branches[0].Asides[0].Layers[0].Of = []string{"900"}
	for _, c := range []struct {
		noun         edit.Noun
		id, to, says string
	}{
		{edit.Wire, "101", "102", "102 is a wire already: take another id for this wire"},
		{edit.Wire, "101", "C1", "C1 is a unit already: take another id for this wire"},
		{edit.Unit, "C1", "101", "101 is a wire already: take another id for this unit"},
		{edit.Breakout, "J1", "SEN", "SEN is a termination already: take another id for this breakout"},
		{edit.Termination, "SEN", "A:B", "A:B has a colon: a termination has none, because wires write TERMINATION:CAVITY"},
		{edit.Splice, "S1", "cut", "cut says how a drain ends: take another id for this splice"},
		{edit.Branch, "T1", "", "an id cannot be empty: type any text that no other branch has"},
		{edit.Branch, "T9", "T8", `no branch has the id "T9". There are T1, R1, L1, L2, L3`},
		{edit.Wire, "101", "900",
			`the lay-up "flat" set aside on T1 still has a 900, which is gone: take another id, or remove that lay-up`},
	} {
		n, _, err := edit.Rename(h, c.noun, c.id, c.to)
		if err == nil || err.Error() != c.says || n != h {
			t.Errorf("%s %s to %q: %v", c.noun, c.id, c.to, err)
		}
	}
	if _, _, err := edit.Rename(h, edit.Feed, "F1", "a\u202eb"); err == nil || !strings.Contains(err.Error(), "Allowed:") {
		t.Errorf("a sign that turns the writing: %v", err)
	}
	if n, says, err := edit.Rename(h, edit.Feed, "F1", "F1"); n != h || len(says) > 0 || err != nil {
		t.Error("renamed to itself it changed")
	}
	if _, _, err := edit.Rename(h, edit.Branch, "T1", "101"); err != nil {
		t.Errorf("a branch may be called as a wire is: %v", err)
	}
}

// A splice that is called as a drain may end is not what the drain names.
func TestRenameLeavesTheWordsOfADrain(t *testing.T) {
	h := loom()
	h.Splices = append(h.Splices, model.Splice{ID: "cut", At: "J1"})
	n, _, err := edit.Rename(h, edit.Splice, "cut", "S2")
	if err != nil || n.Units[0].DrainTo.V != "cut" {
		t.Errorf("%+v %v", n.Units[0], err)
	}
	n, _, _ = edit.Remove(h, edit.Splice, "cut")
	if n.Units[0].DrainTo.V != "cut" {
		t.Errorf("%+v", n.Units[0])
	}
}

// What keeps an old name is said.
func TestRenameSaysWhatStays(t *testing.T) {
	h := everyKey(t)
	for _, c := range []struct {
		noun         edit.Noun
		id, to, says string
	}{
		{edit.Branch, "T1", "T2", "the record of build 003 keeps T1, and its run asks for T2"},
		{edit.Wire, "121", "122", ""},
		{edit.Wire, "121", "101", "101 is a wire already: take another id for this wire"},
		{edit.Termination, "CRK1", "T1", "build 003 already has a record of a T1: compare it with this one"},
		{edit.Splice, "S1", "S2", "the record of build 003 keeps S1, and its run asks for S2"},
	} {
		_, says, err := edit.Rename(h, c.noun, c.id, c.to)
		if err != nil {
			says = []string{err.Error()}
		}
		if got := strings.Join(says, "; "); got != c.says {
			t.Errorf("%s: %s", c.id, got)
		}
	}
	h.Listed = append(h.Listed, model.Listed{Ends: []string{"ECU:4", "P1:B"}})
	n, says, err := edit.Rename(h, edit.Termination, "P1", "ECU")
	if err != nil || !slices.Equal(n.Listed[1].Ends, []string{"ECU:4", "P1:B"}) ||
		!slices.Contains(says, "the independent list has both P1 and ECU: nothing of it was renamed") {
		t.Errorf("%v %v %v", n.Listed, says, err)
	}
}

func TestRenameCavity(t *testing.T) {
	h := loom()
	h.Wires[6].To = model.Some("SEN:B")
	before := text(h)
	n, err := edit.RenameCavity(h, "SEN", "2", "B") // which was an alias of it
	kept(t, h, before, n)
	x := n.Terminations[3]
	if err != nil || strings.Join(x.Cavities, "") != "1B3" || strings.Join(x.Contacts["20"], "") != "1B3" ||
		!slices.Equal(x.Aliases["B"], []string{"+"}) {
		t.Errorf("%+v %v", x, err)
	}
	n, err = edit.RenameCavity(h, "SEN", "1", "A")
	kept(t, h, before, n)
	if err != nil || wire(t, n, "301").To.V != "SEN:A" || wire(t, n, "302").To.V != "SEN:B" {
		t.Errorf("%+v %v", wire(t, n, "301"), err)
	}
	n, _ = edit.RenameCavity(h, "SEN", "3", "C")
	if got := n.Terminations[3].Reserved; !slices.Equal(got, []string{"C"}) {
		t.Errorf("reserved %v", got)
	}
	for _, c := range []struct{ term, cavity, to, says string }{
		{"P1", "A", "B", "P1 lists no cavities of its own: those of an insert are named by the catalogue. Give it an alias"},
		{"SEN", "9", "B", `SEN has no cavity "9". It lists 1, 2, 3`},
		{"SEN", "1", "3", "SEN has a cavity 3 already: take another name"},
		{"SEN", "1", "+", "cavity 2 of SEN is called + too: take another name"},
		{"SEN", "1", "", "a cavity cannot be without a name: type any text that no other cavity of SEN has"},
	} {
		if n, err := edit.RenameCavity(h, c.term, c.cavity, c.to); err == nil || err.Error() != c.says || n != h {
			t.Errorf("%s:%s to %q: %v", c.term, c.cavity, c.to, err)
		}
	}
}
