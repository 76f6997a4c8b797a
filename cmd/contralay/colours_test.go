package main

import (
	"testing"

	"contralay/ui/draw"
)

// How many colours are shown is decided from the flags and the environment alone.
func TestColours(t *testing.T) {
	for _, tt := range []struct {
		name   string
		colour string
		env    map[string]string
		want   draw.Profile
	}{
		{"it says all", "auto", map[string]string{"TERM": "xterm-256color", "COLORTERM": "truecolor"}, draw.TrueColour},
		{"it says all, in other words", "auto", map[string]string{"TERM": "xterm", "COLORTERM": "24bit"}, draw.TrueColour},
		{"256 by name", "auto", map[string]string{"TERM": "xterm-256color"}, draw.Colours256},
		{"a multiplexer that shows 256", "auto", map[string]string{"TERM": "screen-256color", "COLORTERM": "truecolor"}, draw.Colours256},
		{"plain xterm", "auto", map[string]string{"TERM": "xterm"}, draw.Colours16},
		{"the console", "auto", map[string]string{"TERM": "linux"}, draw.Colours16},
		{"a name nobody knows", "auto", map[string]string{"TERM": "something"}, draw.Colours16},
		{"no name", "auto", nil, draw.Colours16},
		{"a terminal without colour", "auto", map[string]string{"TERM": "vt100"}, draw.NoColour},
		{"one that is told to", "always", map[string]string{"TERM": "vt100"}, draw.Colours16},
		{"not wanted", "auto", map[string]string{"TERM": "xterm-256color", "COLORTERM": "truecolor", "NO_COLOR": "1"}, draw.NoColour},
		{"wanted all the same", "always", map[string]string{"TERM": "xterm-256color", "NO_COLOR": "1"}, draw.Colours256},
		{"never", "never", map[string]string{"TERM": "xterm-256color"}, draw.NoColour},
	} {
		if got := colours(options{colour: tt.colour}, func(k string) string { return tt.env[k] }); got != tt.want {
			t.Errorf("%s: %d, want %d", tt.name, got, tt.want)
		}
	}
}
