package main

import (
	"fmt"
	"strings"
	"time"
)

// noticed is how long work may take before a person wonders.
const noticed = 200 * time.Millisecond

// slowly runs work; where it takes longer than a person waits without wondering, and
// somebody is there to read it, a line says what is going on and how long it has
// taken. The line is taken away before anything is printed.
func slowly[T any](w world, what string, work func() T) T {
	if !isTerminal(w.err) {
		return work()
	}
	done := make(chan T, 1)
	go func() { done <- work() }()
	begun, wait, width := time.Now(), time.After(noticed), 0
	for {
		select {
		case v := <-done:
			if width > 0 {
				fmt.Fprint(w.err, "\r"+strings.Repeat(" ", width)+"\r")
			}
			return v
		case <-wait:
			line := fmt.Sprintf("%s, %.1f s", what, time.Since(begun).Seconds())
			width = max(width, len(line))
			fmt.Fprintf(w.err, "\r%-*s", width, line)
			wait = time.After(noticed)
		}
	}
}
