package squareword

import "testing"

func TestWordsForSquares(t *testing.T) {
	for text, want := range map[string]string{
		"1,5 kvadrat":          "1,5 mm²",
		"1,5kvadrat svart":     "1,5 mm² svart",
		"4 Quadratmillimeter,": "4 mm²,",
		"2.5 sq":               "2.5 mm²",
		"2.5 sq. red":          "2.5 mm² red",
		"2.5 square":           "2.5 mm²",
		"6 mm carré":           "6 mm²",
		"4 mm au carré":        "4 mm²",
		"2,5 neliötä":          "2,5 mm²",
		"0,75er":               "0,75 mm²",
		"0,35²":                "0,35 mm²",
		"0.5 mm²":              "0.5 mm²",
		"2er Stecker":          "2er Stecker",
		"2 quadri elettrici":   "2 quadri elettrici",
		"2 square pins":        "2 square pins",
		"relay 3":              "relay 3",
		"":                     "",
	} {
		if got := Plain(text); got != want {
			t.Errorf("%q is %q, want %q", text, got, want)
		}
	}
	if got := Whole("4er"); got != "4 mm²" {
		t.Errorf("a cell of a size: %q", got)
	}
	if got := Whole("4er Stecker"); got != "4er Stecker" {
		t.Errorf("a plug of four: %q", got)
	}
}
