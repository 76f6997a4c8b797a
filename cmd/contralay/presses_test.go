package main

import (
	"strings"
	"testing"

	"contralay/model/file"
	"contralay/model/shorttest"
)

// counted presses keys one by one and counts them.
type counted struct {
	*terminal
	n int
}

// keys presses each key and waits for the screen to answer it.
func (c *counted) keys(keys ...string) {
	c.t.Helper()
	for _, k := range keys {
		c.n++
		c.changed(k)
	}
}

// typed presses each character of a value, then Enter.
func (c *counted) typed(value string) {
	c.t.Helper()
	for _, r := range value {
		c.keys(string(r))
	}
	c.keys(enter)
}

// The whole of a branch in few key presses: 34 x 22 and 4 x 16 and a shielded pair,
// from an unlaid list to a saved file, with a current typed, a reel measured, a spare
// laid in and a sheath chosen. At most 30 where the proposal is taken, at most 60
// where two layers are changed by hand.
func TestKeyPresses(t *testing.T) {
	shorttest.Turn(t)
	t.Parallel()
	for _, way := range shorttest.Some([]struct {
		name   string
		most   int
		byHand bool
	}{{"the proposal", 30, false}, {"two layers by hand", 60, true}}) {
		t.Run(way.name, func(t *testing.T) {
			name := fileOf(t, "job.toml", unlaid())
			c := &counted{terminal: start(t, 80, 24, nil, name)}
			c.see("39 pieces to lay")
			c.until("the lay-up", overLine.MatchString)

			c.typed("2.5")  // the current of the first wire
			c.keys(enter)   // the wire
			c.typed("11.2") // its reel, ten side by side
			c.see("ten side by side")
			c.keys(left, right) // back, and to the layers
			c.until("the options", func(screen string) bool { return strings.Contains(screen, " B  ") })
			c.keys(enter) // the first option
			c.see("laid as")
			if way.byHand {
				_, words := hand(c.text())
				if !strings.Contains(words, "= A") {
					t.Fatalf("in hand is %q", words)
				}
				c.keys(up)                          // the outermost layer
				c.keys("-", "-", up, "+", "+", "+") // in from it, and out of the next
			}
			c.keys(right) // fill
			c.see("FILL")
			if !way.byHand {
				c.keys(enter) // a spare
				c.see("spare")
			}
			c.keys(right, enter) // the first tube
			c.see("SHEATH")
			c.keys(right) // build
			c.see("BUILD")
			c.keys(enter) // save
			c.see("saved to")
			c.n++
			c.press("q")
			c.ends()

			if c.n > way.most {
				t.Errorf("%d key presses, at most %d are wanted", c.n, way.most)
			}
			t.Logf("%s: %d key presses", way.name, c.n)
			d, err := file.Load(name)
			if err != nil {
				t.Fatal(err)
			}
			h := &d.Harness
			if h.Wires[0].Amps.V != 2.5 || len(h.Reels) != 1 || h.Reels[0].OverMM != 1.12 || len(h.Branches[0].Layers) == 0 ||
				len(h.Branches[0].Covers) != 1 {
				t.Errorf("not all of it is in the file: %+v %+v", h.Reels, h.Branches[0])
			}
			if way.byHand == (len(h.Wires) == 41) {
				t.Errorf("%d wires", len(h.Wires))
			}
		})
	}
}
