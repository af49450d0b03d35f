#pragma once

#include "app/pages/statements_presenter.h"
#include "app/theme/theme.h"

#include <QWidget>

#include <map>
#include <tuple>

namespace rig {

class FlowScroll;
class StatementForm;

// Where a finding is noted or a question asked, the same on every page that looks back. What is typed and put
// aside stands here again when it is opened for the same thing.
class StatementBench : public QWidget
{
    Q_OBJECT

public:
    // Both must outlive it.
    StatementBench(Records& records, const Clock& clock, QWidget* parent = nullptr);

    // For what is in view: `entry` with its kind, airframe, coupling, reading and day; `about` says the
    // reading.
    void open(const StatementEntry& entry, const QString& about);
    // Somebody else has written: what is typed stays.
    void catchUp();
    void setLook(const Look& look);
    bool hasTyped() const;

signals:
    void opened();
    void kept(const QString& sentence);
    void putAside();
    void problemArose(const QString& sentence);

private:
    using Key = std::tuple<StatementKind, AirframeId, std::optional<CouplingId>, std::optional<ReadingId>>;

    static Key keyOf(const StatementEntry& entry);
    bool readChoices();
    void keep();

    StatementsPresenter m_presenter;
    StatementForm* m_form = nullptr;
    FlowScroll* m_scroll = nullptr;
    Key m_key{};
    bool m_isOpen = false;
    std::map<Key, StatementEntry> m_aside;
};

} // namespace rig
