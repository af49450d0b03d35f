#pragma once

#include <QComboBox>

#include <algorithm>
#include <optional>

namespace rig {

// A drop-down list of facts by id. The first entry asks to choose; nothing is chosen by itself.
class ChoiceBox : public QComboBox
{
public:
    explicit ChoiceBox(const QString& accessibleName, QWidget* parent = nullptr) : QComboBox{parent}
    {
        setAccessibleName(accessibleName);
        setSizeAdjustPolicy(QComboBox::AdjustToContents);
    }

    void begin(const QString& prompt)
    {
        clear();
        addItem(prompt, QByteArray{});
    }

    template <typename IdType> void add(const QString& text, const IdType& id) { addItem(text, bytesOf(id)); }

    template <typename IdType> void choose(const std::optional<IdType>& id)
    {
        setCurrentIndex(id ? std::max(0, findData(bytesOf(*id))) : 0);
    }

    template <typename IdType> std::optional<IdType> chosen() const
    {
        const QByteArray bytes = currentData().toByteArray();
        IdType id;
        if (bytes.size() != static_cast<qsizetype>(id.bytes.size()))
            return std::nullopt;
        std::copy(bytes.begin(), bytes.end(), id.bytes.begin());
        return id;
    }

private:
    template <typename IdType> static QByteArray bytesOf(const IdType& id)
    {
        return {reinterpret_cast<const char*>(id.bytes.data()), static_cast<qsizetype>(id.bytes.size())};
    }
};

} // namespace rig
