package wirelist_test

import (
	"testing"

	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// The letter that is quoted is read where the answer tells no wire, and never where lines of the answer could be a newer list.
func TestQuotedLetter(t *testing.T) {
	const letter = "> Plug B4\n> pin 1 - up (red, 16 awg)\n> pin 2 - down (blue, 16 awg)\n> pin 3 - stop (white, 20 awg)\n"
	for answer, want := range map[string]int{
		"":             3,
		"Thank you!\n": 3,
		"The feed is red 16 AWG now.\nAnd the stop is white 18 AWG.\n": 0,
	} {
		tables, err := table.Read("letter.txt", []byte(answer+"\n"+letter), table.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		h, _, err := wirelist.Import(tables, draft.Options{})
		if len(h.Wires) != want || (err == nil) != (want > 0) {
			t.Errorf("%q: %d wires, %v", answer, len(h.Wires), err)
		}
	}
}

// A letter may quote another as often as anyone likes; only so many are read.
func TestQuotedTooOften(t *testing.T) {
	line := ""
	for range 2000 {
		line += "> "
	}
	tables, err := table.Read("letter.txt", []byte(line+"1 red\n"+line+"2 blue\n"), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	deep := 0
	for tables != nil {
		deep++
		tables = tables[0].Letter
	}
	if deep > 10 {
		t.Errorf("%d letters", deep)
	}
}
