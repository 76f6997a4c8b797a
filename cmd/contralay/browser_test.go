package main

import (
	"bufio"
	"contralay/model/shorttest"
	"encoding/json"
	"fmt"
	"io"
	"os"
	"os/exec"
	"testing"
	"time"
)

// browser is a headless Chromium that is started once and asked through two pipes, as its
// DevTools protocol says: a message is JSON, and a zero byte ends it. A start costs as much as
// the layout of a page.
type browser struct {
	t       *testing.T
	in      io.Writer
	out     *bufio.Reader
	asked   int
	session string
}

// message is what goes either way.
type message struct {
	ID      int            `json:"id,omitempty"`
	Session string         `json:"sessionId,omitempty"`
	Method  string         `json:"method,omitempty"`
	Params  map[string]any `json:"params,omitempty"`
	Result  map[string]any `json:"result,omitempty"`
	Error   map[string]any `json:"error,omitempty"`
}

// openBrowser starts the browser with an empty page; it skips where there is none.
func openBrowser(t *testing.T) *browser {
	t.Helper()
	path := shorttest.Program(t, "chromium")
	theirIn, in, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	out, theirOut, err := os.Pipe()
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(path, "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
		"--disable-background-networking", "--disable-component-update", "--disable-sync", "--window-size=1000,900",
		"--user-data-dir="+t.TempDir(), "--remote-debugging-pipe")
	cmd.ExtraFiles = []*os.File{theirIn, theirOut} // 3 and 4, as the browser expects them
	if err := cmd.Start(); err != nil {
		t.Fatal(err)
	}
	theirIn.Close()
	theirOut.Close()
	late := time.AfterFunc(90*time.Second, func() { _ = cmd.Process.Kill() })
	b := &browser{t: t, in: in, out: bufio.NewReaderSize(out, 1<<16)}
	t.Cleanup(func() {
		b.ask("Browser.close", nil)
		in.Close()
		_ = cmd.Wait() // before its folder is taken away
		out.Close()
		late.Stop()
	})
	target := b.ask("Target.createTarget", map[string]any{"url": "about:blank"})["targetId"]
	session := b.ask("Target.attachToTarget", map[string]any{"targetId": target, "flatten": true})["sessionId"]
	b.session, _ = session.(string)
	b.ask("Page.enable", nil)
	return b
}

// ask sends one command and gives its result.
func (b *browser) ask(method string, params map[string]any) map[string]any {
	b.t.Helper()
	b.asked++
	own := b.asked
	text, err := json.Marshal(message{ID: own, Session: b.session, Method: method, Params: params})
	if err != nil {
		b.t.Fatal(err)
	}
	if _, err := b.in.Write(append(text, 0)); err != nil {
		b.t.Fatalf("%s: %v", method, err)
	}
	return b.until(method, func(m message) bool { return m.ID == own }).Result
}

// until reads what the browser says up to a message.
func (b *browser) until(what string, is func(message) bool) message {
	b.t.Helper()
	for {
		text, err := b.out.ReadBytes(0)
		if err != nil {
			b.t.Fatalf("the browser went away before %s: %v", what, err)
		}
		var m message
		if err := json.Unmarshal(text[:len(text)-1], &m); err != nil {
			b.t.Fatal(err)
		}
		if is(m) {
			if m.Error != nil {
				b.t.Fatalf("%s: %v", what, m.Error)
			}
			return m
		}
	}
}

// open loads a page and waits until all of it is there.
func (b *browser) open(file string) {
	b.t.Helper()
	b.ask("Page.navigate", map[string]any{"url": "file://" + file})
	b.until("the page is loaded", func(m message) bool { return m.Method == "Page.loadEventFired" })
}

// run runs a script in the page and gives its value as text.
func (b *browser) run(script string) string {
	b.t.Helper()
	got := b.ask("Runtime.evaluate", map[string]any{"expression": script, "returnByValue": true})
	if failed := got["exceptionDetails"]; failed != nil {
		b.t.Fatalf("the script failed: %v", failed)
	}
	value, _ := got["result"].(map[string]any)
	return fmt.Sprint(value["value"])
}
