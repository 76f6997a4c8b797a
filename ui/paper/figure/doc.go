// Package figure is the computed numbers of a sheet, and of lay-ups, as JSON with key names that stay.
package figure
