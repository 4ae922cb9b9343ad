package midplate.web;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import midplate.wire.ErrorBody;
import midplate.words.Message;
import midplate.words.Refusal;
import midplate.words.Texts;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** What the server says to a request so broken that no route sees it: the same form of error as everywhere. */
final class BareErrors extends ErrorHandler {
    private final byte[] body;

    BareErrors(Texts texts) {
        body = ErrorBody.of(
                        texts,
                        new Refusal(
                                "request",
                                Message.of("fault.not-taken"),
                                "a request that is no proper HTTP",
                                "a request as this program's page sends it",
                                "Open the page anew."))
                .getBytes(StandardCharsets.UTF_8);
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, "application/json; charset=utf-8");
        response.getHeaders().put("Content-Security-Policy", Guard.POLICY);
        response.getHeaders().put("X-Content-Type-Options", "nosniff");
        response.getHeaders().put("Referrer-Policy", "no-referrer");
        response.write(true, ByteBuffer.wrap(body), callback);
        return true;
    }
}
