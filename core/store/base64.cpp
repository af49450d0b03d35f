#include "core/store/base64.h"

#include <QByteArray>

namespace rig {

namespace {

QByteArray viewed(std::string_view bytes)
{
    return QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size()));
}

// Whatever else would be read as the same bytes is refused: `again` is how they are written.
std::optional<std::string> ifWrittenSo(const QByteArray& bytes, const QByteArray& again,
                                       std::string_view text)
{
    return again == viewed(text) ? std::optional{bytes.toStdString()} : std::nullopt;
}

} // namespace

std::string base64Of(std::string_view bytes)
{
    return viewed(bytes).toBase64().toStdString();
}

std::optional<std::string> bytesOfBase64(std::string_view text)
{
    const QByteArray bytes = QByteArray::fromBase64(viewed(text));
    return ifWrittenSo(bytes, bytes.toBase64(), text);
}

std::string base16Of(std::string_view bytes)
{
    return viewed(bytes).toHex().toStdString();
}

std::optional<std::string> bytesOfBase16(std::string_view text)
{
    const QByteArray bytes = QByteArray::fromHex(viewed(text));
    return ifWrittenSo(bytes, bytes.toHex(), text);
}

} // namespace rig
