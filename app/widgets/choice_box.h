#pragma once

#include "app/widgets/plain_tip.h"
#include "app/widgets/still_box.h"

#include <QAbstractItemView>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QStandardItemModel>
#include <QStyleOptionComboBox>
#include <QToolTip>

#include <algorithm>
#include <optional>
#include <vector>

namespace rig {

// A drop-down list of facts by id. The first entry asks to choose; nothing is chosen by itself.
class ChoiceBox : public StillBox
{
public:
    explicit ChoiceBox(const QString& accessibleName, QWidget* parent = nullptr) : StillBox{parent}
    {
        setAccessibleName(accessibleName);
        // As wide as its words by sizeHint(): one that Qt adjusts to its contents takes that width by itself,
        // a while later, whatever room its layout gave it.
        setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        for (auto changed : {&QAbstractItemModel::rowsInserted, &QAbstractItemModel::rowsRemoved})
            connect(model(), changed, this, [this] { updateGeometry(); });
        connect(model(), &QAbstractItemModel::dataChanged, this, [this] { updateGeometry(); });
        view()->setTextElideMode(Qt::ElideMiddle); // names that begin alike differ at their end
    }

    // Where room is scarce a long name is cut in its middle, rather than what stands beside it.
    void setNarrows() { m_narrows = true; }

    // Of what can be chosen; why something cannot be is read in the list.
    QSize sizeHint() const override
    {
        const auto* items = static_cast<const QStandardItemModel*>(model());
        int longest = 0;
        for (int i = 0; i < count(); ++i)
            if (items->item(i)->isEnabled())
                longest = std::max(longest, fontMetrics().horizontalAdvance(itemText(i)));
        QStyleOptionComboBox option;
        initStyleOption(&option);
        return style()->sizeFromContents(QStyle::CT_ComboBox, &option, {longest, fontMetrics().height() + 2},
                                         this);
    }

    QSize minimumSizeHint() const override
    {
        const QSize whole = sizeHint();
        const int narrow = kLeastLetters * fontMetrics().averageCharWidth() + kArrow;
        return {m_narrows ? std::min(whole.width(), narrow) : whole.width(), whole.height()};
    }

    // The list shows whole names, also where the box does not.
    void showPopup() override
    {
        view()->setMinimumWidth(std::max(width(), view()->sizeHintForColumn(0) + kArrow));
        StillBox::showPopup();
    }

protected:
    // The whole name where it is cut.
    bool event(QEvent* event) override
    {
        if (event->type() != QEvent::ToolTip || !isCut())
            return StillBox::event(event);
        QToolTip::showText(static_cast<QHelpEvent*>(event)->globalPos(), plainTip(currentText()), this);
        return true;
    }

    // Letters, digits and page keys mean something to the page; here they would choose somebody else unseen.
    void keyPressEvent(QKeyEvent* event) override
    {
        const bool isOfThePage =
            event->key() == Qt::Key_PageUp || event->key() == Qt::Key_PageDown ||
            (event->text().size() == 1 && event->text().front().isPrint() && event->key() != Qt::Key_Space);
        if (isOfThePage && !(event->modifiers() & Qt::ALT))
            return event->ignore();
        StillBox::keyPressEvent(event);
    }

public:
    void begin(const QString& prompt)
    {
        clear();
        addItem(prompt, QByteArray{});
    }

    template <typename IdType> void add(const QString& text, const IdType& id) { addItem(text, bytesOf(id)); }

    // begin() and add() for each, unless the same stands there already: a page that is shown anew is not laid
    // out anew for it.
    template <typename Things> void fill(const QString& prompt, const Things& things)
    {
        std::vector<Entry> entries;
        for (const auto& thing : things)
            entries.push_back(entry(QString::fromStdString(thing.name), thing.id));
        fillWith(prompt, entries);
    }

    // One line of the list; where it is not open it is read and cannot be chosen.
    struct Entry
    {
        QString text;
        QByteArray id;
        bool isOpen = true;
    };
    template <typename IdType> static Entry entry(const QString& text, const IdType& id, bool isOpen = true)
    {
        return {text, bytesOf(id), isOpen};
    }

    void fillWith(const QString& prompt, const std::vector<Entry>& entries)
    {
        const auto* items = static_cast<const QStandardItemModel*>(model());
        const auto stands = [&](int at, const Entry& one) {
            return itemText(at) == one.text && itemData(at).toByteArray() == one.id &&
                   items->item(at)->isEnabled() == one.isOpen;
        };
        int at = 0;
        bool same = count() == static_cast<int>(entries.size()) + 1 && stands(at, {prompt, {}, true});
        for (const Entry& one : entries)
            same = same && stands(++at, one);
        if (same)
            return;
        begin(prompt);
        for (const Entry& one : entries) {
            addItem(one.text, one.id);
            static_cast<QStandardItemModel*>(model())->item(count() - 1)->setEnabled(one.isOpen);
        }
        const bool isAllOpen = std::ranges::all_of(entries, &Entry::isOpen);
        view()->setMinimumWidth(isAllOpen ? 0 : view()->sizeHintForColumn(0));
    }

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
    bool isCut() const
    {
        QStyleOptionComboBox option;
        initStyleOption(&option);
        const QRect room =
            style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, this);
        return fontMetrics().horizontalAdvance(currentText()) > room.width();
    }

    static constexpr int kLeastLetters = 12;
    static constexpr int kArrow = 36; // pixels, with the room around the text
    bool m_narrows = false;

    template <typename IdType> static QByteArray bytesOf(const IdType& id)
    {
        return {reinterpret_cast<const char*>(id.bytes.data()), static_cast<qsizetype>(id.bytes.size())};
    }
};

} // namespace rig
