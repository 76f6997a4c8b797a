// Package font is the one face that drawings are lettered in, and how wide a text is in it. The
// face goes into every PDF, so that a drawing looks the same everywhere.
package font

import (
	"sync"

	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"

	"contralay/model/unit"
)

// CapShare is how high a capital stands, as a share of the size of the face: 1,480 of its 2,048
// units an em. Source: the cap height that the face itself gives in its OS/2 table.
const CapShare = 1480.0 / 2048

// Face is one weight of the face.
type Face struct {
	TTF  []byte
	once sync.Once
	face *sfnt.Font
	mu   sync.Mutex
	wide map[rune]float64 // in sizes of the face; -1: it lacks the sign
	buf  sfnt.Buffer
}

var (
	regular = Face{TTF: goregular.TTF}
	bold    = Face{TTF: gobold.TTF}
)

// Of is the face, bold or not.
func Of(heavy bool) *Face {
	if heavy {
		return &bold
	}
	return &regular
}

// open reads the face when it is asked for first, and keeps others off it: one who measures a text at a time.
func (f *Face) open() {
	f.once.Do(func() {
		f.face, _ = sfnt.Parse(f.TTF) // the bytes are the program's own, and a test reads them
		f.wide = map[rune]float64{}
	})
	f.mu.Lock()
}

// of is how wide a sign is, in sizes of the face; has is whether the face has it. The face is open.
func (f *Face) of(r rune) (wide float64, has bool) {
	w, known := f.wide[r]
	if !known {
		w = -1
		const em = 1000
		if g, err := f.face.GlyphIndex(&f.buf, r); err == nil && g != 0 {
			if a, err := f.face.GlyphAdvance(&f.buf, g, fixed.I(em), 0); err == nil {
				w = float64(a) / 64 / em
			}
		}
		f.wide[r] = w
	}
	if w < 0 {
		return 0.6, false
	}
	return w, true
}

// Width is how wide a text is at a size, both in mm. The size is that of the face, not the height
// of a letter.
func (f *Face) Width(text string, size unit.Millimetre) unit.Millimetre {
	f.open()
	defer f.mu.Unlock()
	sum := 0.0
	for _, r := range text {
		w, _ := f.of(r)
		sum += w
	}
	return size * unit.Millimetre(sum)
}

// Lacks are the signs of a text that the face does not have.
func (f *Face) Lacks(text string) []rune {
	f.open()
	defer f.mu.Unlock()
	var out []rune
	for _, r := range text {
		if _, has := f.of(r); !has {
			out = append(out, r)
		}
	}
	return out
}
