/* The floor: the front matter of each record as bare events, which nobody looks at. events FOLDER */
#include <dirent.h>
#include <stdio.h>
#include <string.h>
#include <yaml.h>

static long events;

/* Counts the events of what stands between the first two lines of ---; 0 where that is no YAML, or there are none. */
static int count(const char *text) {
    const char *end = strncmp(text, "---\n", 4) == 0 ? strstr(text + 3, "\n---\n") : NULL;
    yaml_parser_t parser;
    yaml_event_t event;
    int last = 0;
    if (end == NULL || !yaml_parser_initialize(&parser)) {
        return 0;
    }
    yaml_parser_set_input_string(&parser, (const unsigned char *)text + 4, (size_t)(end + 1 - (text + 4)));
    while (!last && yaml_parser_parse(&parser, &event)) {
        last = event.type == YAML_STREAM_END_EVENT;
        events++;
        yaml_event_delete(&event);
    }
    yaml_parser_delete(&parser);
    return last;
}

int main(int argc, char **argv) {
    static char text[1 << 22];
    char path[4096];
    int records = 0, wrong = 0;
    DIR *folder = argc == 2 ? opendir(argv[1]) : NULL;
    for (struct dirent *entry; folder != NULL && (entry = readdir(folder)) != NULL;) {
        if (strstr(entry->d_name, ".md") == NULL) {
            continue;
        }
        snprintf(path, sizeof path, "%s/%s", argv[1], entry->d_name);
        FILE *file = fopen(path, "rb");
        size_t length = file == NULL ? 0 : fread(text, 1, sizeof text - 1, file);
        text[length] = 0;
        wrong += length == 0 || !count(text);
        records++;
        if (file != NULL) {
            fclose(file);
        }
    }
    printf("%d records, %d wrong, %ld events\n", records, wrong, events);
    return records == 0 || wrong > 0;
}
