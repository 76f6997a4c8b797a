package main

import (
	"runtime/debug"
	"strings"
	"testing"

	"contralay/ui/paper/origin"
)

func TestBuiltFrom(t *testing.T) {
	info := func(pairs ...string) *debug.BuildInfo {
		var b debug.BuildInfo
		for i := 0; i < len(pairs); i += 2 {
			b.Settings = append(b.Settings, debug.BuildSetting{Key: pairs[i], Value: pairs[i+1]})
		}
		return &b
	}
	for _, c := range []struct {
		info *debug.BuildInfo
		want string
	}{
		{nil, "built without a record of its commit"},
		{info("GOOS", "linux"), "built without a record of its commit"},
		{info("vcs.revision", "0123456789abcdef0123", "vcs.time", "2026-05-31T10:20:30Z", "vcs.modified", "false"),
			"commit 0123456789ab of 2026-05-31"},
		{info("vcs.revision", "abc", "vcs.modified", "true"), "commit abc, with changes that are in no commit"},
	} {
		if got := builtFrom(c.info); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
	if o := call(t, "", "version"); o.code != ok || !strings.HasPrefix(o.out, "contralay "+origin.Release+", ") {
		t.Errorf("%d %q", o.code, o.out)
	}
	call(t, "", "version", "x").refused(t, 1, "takes nothing")
}
