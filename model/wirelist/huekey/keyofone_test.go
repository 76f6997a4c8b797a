package huekey_test

import (
	"testing"

	"contralay/model/wirelist/huekey"
)

// A sentence may say what one short form means. One whose letters are not in the words for the colour says the colour of a net.
func TestKeyOfOneColour(t *testing.T) {
	for text, want := range map[string]string{
		"DBU is dark blue": "dark blue", "LGN means light green.": "light green", "VT = violet": "violet",
		"GND is black": "", "CAN is yellow": "", "PE is green/yellow": "", "RD is": "", "It is dark blue": "", "DBU was dark blue": "",
	} {
		key := huekey.ReadColourKey(text)
		got := ""
		for _, word := range key {
			got = word
		}
		if got != want || len(key) > 1 {
			t.Errorf("%q is read as %v, want %q", text, key, want)
		}
	}
}
