package midplate.web;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import midplate.wire.ErrorBody;
import midplate.words.Language;
import midplate.words.Message;
import midplate.words.Refusal;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** What the server says to a request so broken that no route sees it: the same form of error as everywhere. */
final class BareErrors extends ErrorHandler {
    private final Tongue tongue;

    BareErrors(Tongue tongue) {
        this.tongue = tongue;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        Language language = Tongue.asked(request.getHeaders().get(HttpHeader.ACCEPT_LANGUAGE));
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, "application/json; charset=utf-8");
        response.getHeaders().put(HttpHeader.CONTENT_LANGUAGE, language.tag());
        response.getHeaders().put(HttpHeader.VARY, Tongue.ASKED);
        response.getHeaders().put("Content-Security-Policy", Guard.POLICY);
        response.getHeaders().put("X-Content-Type-Options", "nosniff");
        response.getHeaders().put("Referrer-Policy", "no-referrer");
        response.write(true, ByteBuffer.wrap(body(language).getBytes(StandardCharsets.UTF_8)), callback);
        return true;
    }

    private String body(Language language) {
        return ErrorBody.of(
                tongue.in(language).texts(),
                new Refusal(
                        "request",
                        Message.of("fault.not-taken"),
                        "a request that is no proper HTTP",
                        Message.of("allowed.request-of-page"),
                        Message.of("todo.open-page")));
    }
}
