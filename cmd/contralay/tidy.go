package main

import (
	"runtime"
	"time"
)

// restful is how long after a key nobody is thought to be waiting: longer than between
// two keys of a held one, shorter than between two thoughts.
const restful = 60 * time.Millisecond

// tidier collects garbage once after a key, when the keys rest, so that the next one
// does not meet a collection. A program at rest does nothing.
type tidier struct{ timer *time.Timer }

// key says that a key has been taken and shown.
func (t *tidier) key() {
	if t.timer == nil {
		t.timer = time.AfterFunc(restful, runtime.GC)
		return
	}
	t.timer.Reset(restful)
}
