package slackwater.simulator.app;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A JSON object as a script would read it. */
record Json(Map<String, Object> fields) {

    /** Reads exactly one object; anything else before or after it is refused. */
    static Json only(final String text) throws IOException {
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                throw new IOException("this does not begin with an object: " + text);
            }
            final Json object = object(parser);
            if (parser.nextToken() != null) {
                throw new IOException("something follows the object: " + text);
            }
            return object;
        }
    }

    private static Json object(final JsonParser parser) throws IOException {
        final Map<String, Object> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            final String name = parser.currentName();
            parser.nextToken();
            if (fields.put(name, value(parser)) != null) {
                throw new IOException("the field " + name + " stands there twice");
            }
        }
        return new Json(fields);
    }

    private static Object value(final JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(parser);
            case START_ARRAY -> {
                final List<Object> items = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    items.add(value(parser));
                }
                yield items;
            }
            case VALUE_STRING -> parser.getText();
            case VALUE_NUMBER_INT -> parser.getLongValue();
            case VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            default -> throw new IOException("a value of kind " + parser.currentToken() + " is not expected");
        };
    }

    Object at(final String name) {
        return Objects.requireNonNull(fields.get(name), () -> "no field " + name + " in " + fields.keySet());
    }

    String text(final String name) {
        return (String) at(name);
    }

    double number(final String name) {
        return ((Number) at(name)).doubleValue();
    }

    Json object(final String name) {
        return (Json) at(name);
    }

    List<Json> objects(final String name) {
        return ((List<?>) at(name)).stream().map(Json.class::cast).toList();
    }
}
