package catalogue

import (
	"reflect"
	"strings"
	"testing"
)

// A correction is written as it is read: of diameters with its bias, of work with its minutes, withdrawn with nothing but the day.
func TestCorrectionsAreReadAsWritten(t *testing.T) {
	over := Correction{Of: "over, 3 layers", Bias: 0.02, Spread: 0.01, Low: 0.015, High: 0.025, Readings: 12,
		On: "2026-05-31", From: "a, b"}
	work := Correction{Of: MinutesOf + "cut", Each: 1.5, EachSpread: 0.25, Pieces: 40, Readings: 9, On: "2026-05-31", From: "a \"b\""}
	gone := Correction{Of: "over, 3 layers", On: "2026-06-01", Withdrawn: true}
	c, err := Read(strings.NewReader(over.Text()+work.Text()+gone.Text()), "shop.toml")
	if err != nil {
		t.Fatal(err)
	}
	if want := []Correction{over, work, gone}; !reflect.DeepEqual(c.Corrections, want) {
		t.Errorf("%+v\nwant %+v", c.Corrections, want)
	}
	if got, ok := c.Correction("over, 3 layers"); ok {
		t.Errorf("withdrawn and in force: %+v", got)
	}
	if got, ok := c.Correction(work.Of); !ok || got != work {
		t.Errorf("%v %+v", ok, got)
	}
}

// A text of a list that is empty, or begins or ends in a blank, is refused, as is what is no text.
func TestTextsOfAList(t *testing.T) {
	for _, bad := range []string{`""`, `" 1"`, `"1 "`, `7`, `"2", "2"`} {
		text := "[[insert]]\nid = \"own\"\naliases = [" + bad + "]\nshell = 8\ncontacts = [{ size = \"20\", count = 1 }]\n" +
			"source = \"measured\"\nstanding = \"published\"\n"
		if _, err := Read(strings.NewReader(text), "shop.toml"); err == nil || !strings.Contains(err.Error(), "aliases: ") {
			t.Errorf("[%s]: %v", bad, err)
		}
	}
}
