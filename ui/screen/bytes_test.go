package screen_test

import (
	"fmt"
	"testing"
	"testing/synctest"
	"time"

	"contralay/model/shorttest"
	"contralay/ui/bench"
	"contralay/ui/bench/benchtest"
	"contralay/ui/draw"
	"contralay/ui/screen"
)

// counter counts what is written.
type counter struct{ n int }

func (c *counter) Write(p []byte) (int, error) {
	c.n += len(p)
	return len(p), nil
}

// What a key costs the line to a terminal far away, in true colour: 2 kB where the section stays,
// 10 kB at 80×24 and 24 kB at 120×40 where all of it changes. They are counts, not times.
func TestBytesOfAKey(t *testing.T) {
	for _, c := range []struct {
		file       string
		keys       []string // up to the first that is counted
		counted    []string
		stays      bool
		w, h, most int
	}{
		// The cursor goes down among rows that leave the section alone.
		{"demo.toml", []string{"right", "end", "up"}, []string{"up", "up", "down"}, true, 80, 24, 2000},
		{"demo.toml", []string{"right", "end", "up"}, []string{"up", "up", "down"}, true, 120, 40, 2000},
		{"whole.toml", []string{"right", "end", "up"}, []string{"up", "down"}, true, 120, 40, 2000},
		// Another layer, another wire, another way of colouring, a closer look, another branch.
		{"demo.toml", nil, []string{"down", "down", "right", "down", "down", "*", "*", "*", "*", "*", "*", "/", "/"}, false, 80, 24, 10000},
		{"demo.toml", nil, []string{"down", "down", "right", "down", "down", "*", "*", "*", "*", "*", "*", "/", "/"}, false, 120, 40,
			24000},
		{"whole.toml", nil, []string{"down", "right", "down", "*", "*", "*", "*", "*", "*", "/", "/", "/"}, false, 80, 24, 10000},
		{"whole.toml", nil, []string{"down", "right", "down", "*", "*", "*", "*", "*", "*", "/", "/", "/"}, false, 120, 40, 24000},
	} {
		if c.file == "whole.toml" && !shorttest.Long() {
			continue // it takes longer to lay than to show
		}
		for _, dark := range []bool{true, false} {
			m := benchtest.Open(t, c.file)
			m.ShownOn(draw.NewPalette(draw.TrueColour, dark), false)
			benchtest.Size(m, c.w, c.h)
			for _, k := range c.keys {
				benchtest.Update(m, benchtest.Message(k))
			}
			frames := []string{bench.Program{Model: m}.View()}
			for _, k := range c.counted {
				benchtest.Update(m, benchtest.Message(k))
				frames = append(frames, bench.Program{Model: m}.View())
			}
			synctest.Test(t, func(t *testing.T) {
				var out counter
				s := screen.New(&out, c.w)
				for n, frame := range frames {
					before := out.n
					s.Show(frame)
					time.Sleep(2 * screen.Apart)
					took, key := out.n-before, "the first frame"
					if n > 0 {
						key = fmt.Sprintf("key %d, %s", n, c.counted[n-1])
					}
					says := fmt.Sprintf("%s at %d×%d, dark %v, %s: %d bytes", c.file, c.w, c.h, dark, key, took)
					if n > 0 && took > c.most {
						t.Errorf("%s, %d are allowed", says, c.most)
					} else if t.Log(says); took == 0 {
						t.Errorf("%s: nothing was shown", says)
					}
				}
			})
		}
	}
}
