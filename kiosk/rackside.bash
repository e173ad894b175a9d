# Completes the command line of rackside in bash. The program itself knows its words, so this file has none to go stale;
# file names are offered where none of its words fits.
_rackside() {
  local word=${COMP_WORDS[COMP_CWORD]} line=${COMP_LINE:0:COMP_POINT}
  COMPREPLY=()
  mapfile -t COMPREPLY < <(compgen -W "$("${COMP_WORDS[0]}" "[suggest:${#line}]" "$line" 2>/dev/null | grep -v '^[/@]\|^-?$')" -- "$word")
}
complete -o default -F _rackside rackside
